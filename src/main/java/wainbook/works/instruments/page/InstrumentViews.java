package wainbook.works.instruments.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import wainbook.ledger.Entry;
import wainbook.page.Filled;
import wainbook.page.Form;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.CalibrationPoint;
import wainbook.works.WorksSaying.GearDescribed;
import wainbook.works.WorksSaying.WithdrawalCause;
import wainbook.works.instruments.Calibrations;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRow;
import wainbook.works.instruments.Issue;
import wainbook.works.instruments.calibration.PointVerdict;
import wainbook.works.instruments.daily.Checking;
import wainbook.works.instruments.drift.DriftChart;
import wainbook.works.instruments.drift.Series;

/** What the pages about instruments show. */
public final class InstrumentViews {

    /** How long before its due day an instrument is said to be due soon: time to send it away and have it back. */
    static final int SOON_DAYS = 30;

    /** How an instrument stands on a day. */
    public enum Standing {
        USABLE,
        DUE_SOON,
        OVERDUE,
        NEVER_CALIBRATED,
        WITHDRAWN;

        static Standing of(boolean withdrawn, LocalDate due, LocalDate today) {
            if (withdrawn) {
                return WITHDRAWN;
            } else if (due == null) {
                return NEVER_CALIBRATED;
            } else if (today.isAfter(due)) {
                return OVERDUE;
            }
            return today.plusDays(SOON_DAYS).isAfter(due) ? DUE_SOON : USABLE;
        }

        public boolean barred() {
            return this == OVERDUE || this == NEVER_CALIBRATED || this == WITHDRAWN;
        }

        public String words() {
            return Words.of("works.instrumentStanding." + this);
        }
    }

    private InstrumentViews() {}

    /** One line of the register. */
    public record Row(InstrumentRow row, Standing standing) {
        public String due() {
            return row.due == null ? "–" : Formats.date(row.due);
        }
    }

    /** The register as it was searched. */
    public record Listed(List<Row> rows, List<String> kinds, Form form, String csv, boolean mayRegister) {
        public List<Option> kindOptions() {
            return kinds.stream().map(kind -> new Option(kind, kind)).toList();
        }

        public List<Option> standings() {
            return List.of(Standing.values()).stream()
                    .map(one -> new Option(one.name(), one.words()))
                    .toList();
        }
    }

    /** The form for a new instrument. */
    public record Registering(Filled filled) {}

    /** One instrument, with the forms that the reader may use. */
    public record One(
            Instrument instrument,
            Calibrations calibrations,
            Optional<Issue> out,
            Optional<GearDescribed> gear,
            LocalDate today,
            long seen,
            Filled filled,
            boolean mayKeep,
            boolean mayWithdraw) {

        /** A calibration, with who put it on record. */
        public record Line(Calibrated said, Entry entry) {
            public String on() {
                return Formats.date(said.on());
            }

            public String due() {
                return said.due().map(Formats::date).orElse("–");
            }

            public boolean foundInDoubt() {
                return PointVerdict.putsInDoubt(said);
            }

            public String foundWords() {
                return Words.of(
                        "works.pointVerdict." + PointVerdict.asFound(said).name());
            }

            public String leftWords() {
                return Words.of("works.adjustment." + said.adjustment());
            }

            public String found() {
                return points(said.asFound());
            }

            public String left() {
                return points(said.asLeft());
            }

            private static String points(List<CalibrationPoint> points) {
                return points.stream()
                        .map(point -> Words.of(
                                "works.pointInWords",
                                point.target().toPlainString(),
                                Formats.signed(point.errorPercent()),
                                point.expandedPercent().stripTrailingZeros().toPlainString()))
                        .collect(Collectors.joining(" · "));
            }
        }

        public List<Option> causes() {
            return Arrays.stream(WithdrawalCause.values())
                    .map(cause -> new Option(cause.name(), Words.of("works.cause." + cause)))
                    .toList();
        }

        /** One chart for each point, the largest first: there most is at stake. */
        public List<DriftChart> drifts() {
            return Series.of(calibrations).stream()
                    .sorted(Comparator.comparing(Series::target).reversed())
                    .map(series -> new DriftChart(series, instrument.unit(), instrument.due()))
                    .toList();
        }

        public String date(LocalDate day) {
            return Formats.date(day);
        }

        public String expires() {
            return gear.flatMap(GearDescribed::expires).map(Formats::date).orElse("");
        }

        public boolean torqueTool() {
            return instrument.kind().startsWith("torque-") && !instrument.kind().equals(Checking.TESTER);
        }

        public Standing standing() {
            return Standing.of(
                    instrument.withdrawnBecause().isPresent(), instrument.due().orElse(null), today);
        }

        /** The newest first. */
        public List<Line> calibrationLines() {
            var lines = new ArrayList<Line>();
            calibrations.byDay().forEach(entry -> lines.add(0, new Line(Calibrations.said(entry), entry)));
            return lines;
        }

        public String range() {
            return Words.of(
                    "works.rangeInWords",
                    instrument.lower().toPlainString(),
                    instrument.upper().toPlainString(),
                    instrument.unit());
        }

        public String accuracy() {
            return instrument.accuracyPercent().map(BigDecimal::toPlainString).orElse("");
        }

        public UUID actId() {
            return UUID.randomUUID();
        }

        public String path() {
            return "/instruments/" + instrument.code();
        }
    }
}
