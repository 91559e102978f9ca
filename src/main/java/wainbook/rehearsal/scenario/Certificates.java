package wainbook.rehearsal.scenario;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Actor;
import wainbook.ledger.History;
import wainbook.ledger.Subject;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.crew.Acts;
import wainbook.works.WorksSaying.Adjustment;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.CalibrationPoint;
import wainbook.works.instruments.Calibrations;
import wainbook.works.instruments.calibration.Calibrating.ToCalibrate;

/**
 * Puts the old certificates of torque tools on record, as a works does that begins to keep its book: a calibration a year,
 * with an error that grows and scatters a little. The newest one is that of the register, now with its figures.
 */
public final class Certificates {

    /**
     * What is drawn.
     *
     * @param permittedPercent and {@code expandedPercent} (W) of every point
     * @param scatterPercent about the line
     */
    record Drawn(BigDecimal permittedPercent, BigDecimal expandedPercent, double scatterPercent, List<Tool> tools) {
        Drawn {
            tools = List.copyOf(tools);
        }

        static Drawn none() {
            return new Drawn(BigDecimal.valueOf(4), BigDecimal.ONE, 0, List.of());
        }
    }

    /**
     * One tool.
     *
     * @param newestPercent error of the newest calibration at the largest point; the others lie a little nearer zero
     * @param percentPerYear how it grows
     */
    record Tool(String code, List<BigDecimal> points, double newestPercent, double percentPerYear, int calibrations) {
        Tool {
            points = List.copyOf(points);
        }
    }

    private static final int DAYS_BETWEEN = 362;

    private final Acts acts;
    private final Drawn drawn;
    private final long seed;
    private final String person;

    public Certificates(Acts acts, Drawn drawn, long seed, String person) {
        this.acts = acts;
        this.drawn = drawn;
        this.seed = seed;
        this.person = person;
    }

    /** Those that are not there yet; a tool that the works has changed since is left alone. */
    public void puttingOnRecord(Clock clock) {
        Actor actor = Actor.of(person, clock);
        for (Tool tool : drawn.tools()) {
            History history = acts.ledger.history(Subject.instrument(tool.code()));
            List<Calibrated> there = Calibrations.of(history).byDay().stream()
                    .map(Calibrations::said)
                    .toList();
            if (there.size() == 1 && there.get(0).left().isEmpty()) {
                for (int before = tool.calibrations() - 1; before >= 0; before--) {
                    acts.calibrating
                            .calibrate(asked(tool, there.get(0), before), actor)
                            .fold(done -> done, already -> already, reasons -> {
                                throw new IllegalStateException(tool.code() + " is refused: " + reasons);
                            });
                }
            }
        }
    }

    /** @param before how many calibrations before the newest */
    private ToCalibrate asked(Tool tool, Calibrated newest, int before) {
        Dice dice = Dice.of(seed, "certificate", tool.code(), before);
        LocalDate on = newest.on().minusDays((long) before * DAYS_BETWEEN);
        return new ToCalibrate(
                dice.id(),
                tool.code(),
                on,
                before == 0 ? newest.due() : Optional.of(on.plusDays(DAYS_BETWEEN + 3L)),
                before == 0 ? newest.certificate() : "C-" + dice.between(1000, 3999),
                Optional.of("Calibration laboratory of the demonstration"),
                Optional.of(drawn.permittedPercent()),
                points(tool, before, dice),
                Adjustment.NONE,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private List<CalibrationPoint> points(Tool tool, int before, Dice dice) {
        var points = new ArrayList<CalibrationPoint>();
        for (int i = 0; i < tool.points().size(); i++) {
            double share = 0.8 + 0.2 * (i + 1) / tool.points().size();
            double error = (tool.newestPercent() - before * tool.percentPerYear()) * share
                    + (dice.aboutTheMiddle() - 0.5) * 2 * drawn.scatterPercent();
            points.add(new CalibrationPoint(
                    tool.points().get(i),
                    List.of(),
                    BigDecimal.valueOf(error).setScale(2, RoundingMode.HALF_EVEN),
                    drawn.expandedPercent()));
        }
        return points;
    }
}
