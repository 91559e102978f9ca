package wainbook.quality.containment.page.view;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.page.Filled;
import wainbook.page.Leaf;
import wainbook.page.Words;
import wainbook.quality.QualitySaying.About;
import wainbook.quality.QualitySaying.DoubtClosed;
import wainbook.quality.QualitySaying.DoubtOpened;
import wainbook.quality.QualitySaying.ErrorAt;
import wainbook.quality.QualitySaying.Errors;
import wainbook.quality.QualitySaying.Ground;
import wainbook.quality.QualitySaying.Sort;
import wainbook.quality.containment.Containment;
import wainbook.quality.containment.vehicle.VehicleDoubtRow;

/**
 * One containment as its page shows it.
 *
 * @param rows every vehicle that was told
 * @param untold vehicles that it touches and that have not heard yet
 * @param figures a calibration that it can be worked out with
 * @param against what stands against closing it
 */
public record ContainmentView(
        Containment containment,
        List<VehicleDoubtRow> rows,
        List<VehicleView> vehicles,
        Leaf leaf,
        List<String> untold,
        Optional<Entry> figures,
        List<Reason> against,
        Filled filled,
        boolean mayDecide,
        boolean mayOpen) {

    public String path() {
        return "/quality/containments/" + code();
    }

    public String code() {
        return containment.code();
    }

    public DoubtOpened said() {
        return containment.said();
    }

    public String subject() {
        return inWords(containment.about());
    }

    static String inWords(About about) {
        return switch (about.sort()) {
            case INSTRUMENT -> Words.of("quality.aboutInstrument", about.code());
            case LOT ->
                Words.of("quality.aboutLot", about.code(), about.part().orElseGet(() -> Words.of("quality.anyPart")));
            case REVISION ->
                Words.of(
                        "quality.aboutRevision",
                        about.code(),
                        about.revision().orElse(0),
                        about.item().orElseGet(() -> Words.of("quality.allItems")));
            case COMPETENCE ->
                Words.of("quality.aboutCompetence", about.competence().orElse("–"), about.code());
        };
    }

    /** Where what it is about has its own page. */
    public String aboutPath() {
        return switch (containment.about().sort()) {
            case INSTRUMENT -> "/instruments/" + containment.about().code();
            case LOT -> "/trace?q=" + URLEncoder.encode(containment.about().code(), StandardCharsets.UTF_8);
            case REVISION ->
                "/process/sheets/" + containment.about().code() + "?revision="
                        + containment.about().revision().orElse(1);
            case COMPETENCE -> "/people/" + containment.about().code();
        };
    }

    public int toDecide() {
        return rows.stream().mapToInt(row -> row.sureOut + row.possible).sum();
    }

    public int decided() {
        return rows.stream().mapToInt(VehicleDoubtRow::decided).sum();
    }

    public int sureOut() {
        return rows.stream().mapToInt(row -> row.sureOut).sum();
    }

    public int possible() {
        return rows.stream().mapToInt(row -> row.possible).sum();
    }

    public int safe() {
        return rows.stream().mapToInt(row -> row.safe).sum();
    }

    public long held() {
        return rows.stream().filter(row -> row.held).count();
    }

    /** What state it is in, for the title. */
    public String state() {
        if (!containment.isOpen()) {
            return Words.of("quality.stateClosed");
        }
        return toDecide() == decided()
                ? Words.of("quality.stateAllDecided")
                : Words.of("quality.progress", decided(), toDecide());
    }

    public boolean ofInstrument() {
        return containment.about().sort() == Sort.INSTRUMENT;
    }

    public String basis() {
        return Words.of("quality.basis." + said().window().basis().name());
    }

    public boolean allTime() {
        return said().window().basis() == wainbook.quality.QualitySaying.Basis.ALL_TIME;
    }

    public Optional<Errors> errors() {
        return containment.errors();
    }

    public String within(Errors errors) {
        return errors.goodWithinPercent().map(band -> band.toPlainString()).orElse("");
    }

    public List<ErrorAt> good() {
        return errors().map(Errors::good).orElse(List.of());
    }

    public List<ErrorAt> found() {
        return errors().map(Errors::found).orElse(List.of());
    }

    /** What would lift that nothing could be worked out. */
    public boolean lacksFigures() {
        return ofInstrument()
                && errors().isEmpty()
                && vehicles.stream()
                        .flatMap(vehicle -> vehicle.readings().stream())
                        .anyMatch(one -> one.said().ground() == Ground.NO_FIGURES);
    }

    public String closedBecause() {
        return containment
                .closed()
                .map(entry -> ((DoubtClosed) entry.saying()).reason())
                .orElse("");
    }
}
