package wainbook.engineering.flow.forecast.model;

/**
 * An open hold on a vehicle.
 *
 * @param stopsWork nothing is done on the vehicle before the release; otherwise only its gate is not signed before
 */
public record Hold(boolean stopsWork, Release release) {

    /** When it ends. */
    public sealed interface Release {}

    /** Stated, or asked: 'if released at'. */
    public record At(double minute) implements Release {}

    /**
     * As such holds have ended before.
     *
     * @param length of such holds, in working minutes of the line
     * @param openMinutes how long this one has been open, in the same minutes
     */
    public record AsBefore(Minutes length, double openMinutes) implements Release {}
}
