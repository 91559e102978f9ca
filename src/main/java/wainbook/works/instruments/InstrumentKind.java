package wainbook.works.instruments;

/**
 * A kind of instrument.
 *
 * @param calibrated whether instruments of it are calibrated, or only looked at before use
 */
public record InstrumentKind(String code, String title, String unit, boolean calibrated) {}
