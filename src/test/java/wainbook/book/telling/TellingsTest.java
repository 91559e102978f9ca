package wainbook.book.telling;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.handover.HandoverSaying;
import wainbook.handover.record.RecordSaying;
import wainbook.isolation.Cast;
import wainbook.isolation.Danger;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.IsolationSaying.Observed;
import wainbook.isolation.IsolationSaying.PointMeasured;
import wainbook.isolation.IsolationSaying.Reading;
import wainbook.isolation.permit.StopCause;
import wainbook.isolation.proof.Verdict;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.Superseded;
import wainbook.line.LineSaying;
import wainbook.page.Formats;
import wainbook.process.plan.Point.Pair;
import wainbook.quality.QualitySaying;
import wainbook.safety.SafetySaying;
import wainbook.station.StationSaying.About;
import wainbook.waste.WasteSaying;

class TellingsTest {

    /** Rooms whose entries lie in streams of their own: of people, instruments, check sheets, campaigns and the works. */
    private static final List<String> NOT_OF_A_VEHICLE =
            List.of("works", "process", "pack", "setup", "paper", "line", "campaign");

    /** Said of containments, drifts, questions, near misses, visits, forecasts and containers of waste in the stream of their cause or of the works; what a vehicle hears of them is told. */
    private static final List<Class<?>> IN_THE_STREAM_OF_THEIR_CAUSE = List.of(
            LineSaying.ForecastKept.class,
            LineSaying.EntryOrderSet.class,
            HandoverSaying.TextReleased.class,
            RecordSaying.ListWorded.class,
            QualitySaying.DoubtOpened.class,
            QualitySaying.DoubtWorkedOut.class,
            QualitySaying.DoubtClosed.class,
            QualitySaying.DriftSettled.class,
            QualitySaying.QuestionAnswered.class,
            QualitySaying.QuestionSettled.class,
            QualitySaying.StatisticsAgreed.class,
            QualitySaying.StatisticsEnded.class,
            SafetySaying.NearMissReported.class,
            SafetySaying.NearMissTold.class,
            SafetySaying.NearMissLookedAt.class,
            SafetySaying.NearMissClosed.class,
            SafetySaying.StopLifted.class,
            SafetySaying.VisitorInducted.class,
            SafetySaying.VisitorEntered.class,
            SafetySaying.HostTookOver.class,
            SafetySaying.VisitorLeft.class,
            WasteSaying.ContainerOpened.class,
            WasteSaying.PutIn.class,
            WasteSaying.PutInVoided.class,
            WasteSaying.ContainerSealed.class,
            WasteSaying.Collected.class,
            WasteSaying.ReturnNoted.class);

    private static final Tellings TELLINGS = Tellings.all();

    @Kind("future.somethingNewDone/1")
    record SomethingNewDone() implements Saying {}

    @Test
    void every_kind_that_can_be_said_of_a_vehicle_is_told() {
        List<Class<?>> kinds = kinds();
        assertThat(kinds).hasSizeGreaterThan(60).contains(IsolationSaying.OwnerTold.class);
        assertThat(kinds).filteredOn(kind -> !TELLINGS.know(kind)).isEmpty();
    }

    @Test
    void a_kind_that_nobody_tells_yet_is_told_by_its_name() {
        Told told = new Tellings().tell(new SomethingNewDone(), null);
        assertThat(told.what()).isEqualTo("future: something new done");
    }

    @Test
    void a_reading_is_told_with_its_sign_and_unit() {
        var readings = List.of(
                new Reading(Pair.PLUS_MINUS, new BigDecimal("0.30")),
                new Reading(Pair.PLUS_CHASSIS, new BigDecimal("-640")),
                new Reading(Pair.MINUS_CHASSIS, new BigDecimal("0")));
        Told told = tell(new PointMeasured("JB-A", "VT-1", readings));
        assertThat(told.what()).isEqualTo("Point JB-A measured with VT-1");
        assertThat(told.value()).isEqualTo("plus to minus +0.30 V; plus to chassis −640 V; minus to chassis 0 V");
    }

    @Test
    void a_reading_that_does_not_count_says_why() {
        var observed = new Observed(
                "JB-A", "VT-1", Cast.readings("0.1"), List.of("isolation.noProofBegun", "isolation.ruleOfLongAgo"));
        assertThat(tell(observed).what())
                .isEqualTo("Point JB-A measured with VT-1: observation only, it passes nothing. "
                        + "This can’t count. No proof is under way. isolation.ruleOfLongAgo");
    }

    @Test
    void a_paper_is_told_by_its_number_who_holds_it_and_until_when_by_local_time() {
        Instant until = Instant.parse("2026-07-01T13:30:00Z");
        assertThat(tell(Cast.permit(3, "P-11", until)).what())
                .startsWith("Permit to work 3 issued to name of P-11, until 1 Jul 2026 14:30. Work: ")
                .contains("Points of work: JB-A");
        assertThat(tell(Cast.sanction(4, "P-01", until)).what())
                .startsWith("Sanction for test 4 issued to name of P-01, until 1 Jul 2026 14:30. Work: ");
        assertThat(tell(Cast.livePermit(5, "P-01", "P-02", until)).what())
                .startsWith("Live-work permit 5 issued to name of P-01 with name of P-02 as second person, "
                        + "until 1 Jul 2026 14:30. Work: ");
    }

    @Test
    void danger_a_stop_and_a_lock_are_told_in_the_words_of_the_forms() {
        assertThat(tell(new IsolationSaying.DangerReported(Danger.HEAT_OR_FIRE, "roof"))
                        .what())
                .isEqualTo("Danger reported: Heat, smoke, smell or fire. Where: roof");
        assertThat(tell(new IsolationSaying.WorkStopped(StopCause.BREAK, Optional.of("lunch")))
                        .what())
                .isEqualTo("Work stopped: Break, locks on, area kept. Note: “lunch”.");
        assertThat(tell(new IsolationSaying.LockedOff("LK-7")).what()).isEqualTo("Lock LK-7 taken off");
    }

    @Test
    void what_voids_or_endangers_stands_out_as_a_failure_does() {
        assertThat(IsolationTellings.inWords(Verdict.VOIDED)).isEqualTo(new Told.Verdict(false, "isolation void"));
        assertThat(IsolationTellings.inWords(Verdict.DANGER)).isEqualTo(new Told.Verdict(false, "danger"));
        assertThat(IsolationTellings.inWords(Verdict.FAILED)).isEqualTo(new Told.Verdict(false, "failed"));
        assertThat(IsolationTellings.inWords(Verdict.PASSED)).isEqualTo(new Told.Verdict(true, "passed"));
    }

    private static Told tell(Saying saying) {
        return TELLINGS.tell(saying, new Codes());
    }

    private static List<Class<?>> kinds() {
        return new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("wainbook").stream()
                        .filter(type -> type.isAnnotatedWith(Kind.class))
                        .filter(type -> !NOT_OF_A_VEHICLE.contains(room(type)))
                        .<Class<?>>map(JavaClass::reflect)
                        .filter(type -> !Superseded.class.isAssignableFrom(type))
                        .filter(type -> !IN_THE_STREAM_OF_THEIR_CAUSE.contains(type))
                        .toList();
    }

    private static String room(JavaClass type) {
        return type.getAnnotationOfType(Kind.class).value().replaceAll("\\..*", "");
    }

    /** Tells codes as they are, and people by their number. */
    private static final class Codes implements Names {
        @Override
        public String item(About about) {
            return about.item();
        }

        @Override
        public String stage(String code) {
            return code;
        }

        @Override
        public String place(String code) {
            return code;
        }

        @Override
        public String person(String number) {
            return "name of " + number;
        }

        @Override
        public String time(Instant at) {
            return new Formats(ZoneId.of("Europe/London")).moment(at);
        }
    }
}
