package wainbook.handover.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.handover.record.RecordSaying.Absence;
import wainbook.handover.record.RecordSaying.ConditionPictured;
import wainbook.handover.record.RecordSaying.Instructed;
import wainbook.handover.record.RecordSaying.InstructionOmitted;
import wainbook.handover.record.RecordSaying.Manner;
import wainbook.handover.record.RecordSaying.Outsider;
import wainbook.handover.record.RecordSaying.PartWithdrawn;
import wainbook.handover.record.RecordSaying.ReceiptMissing;
import wainbook.handover.record.RecordSaying.ReceiptSigned;
import wainbook.handover.record.RecordSaying.SnagAgreed;
import wainbook.handover.record.RecordSaying.SnagClosed;
import wainbook.handover.record.RecordSaying.Sort;
import wainbook.handover.record.RecordSaying.StateRead;
import wainbook.handover.record.RecordSaying.Thing;
import wainbook.handover.record.RecordSaying.ThingsListed;
import wainbook.handover.record.RecordSaying.WarrantyBegun;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.WorkOrder;

/** What a handover record wants before the vehicle leaves, and when its receipt counts. */
class RecordRulesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 10);
    private static final Outsider SOMEBODY = new Outsider("O-1", "a".repeat(64));

    private final List<Entry> entries = new ArrayList<>();

    RecordRulesTest() {
        say(new Ordered("Vale and Fen", "bus-12m", "bus-12m", "BUS-12M", List.of("final"), DAY));
    }

    @Test
    void each_missing_part_is_named_with_what_lifts_it() {
        assertThat(keys())
                .containsExactly(
                        "handover.recordNoState",
                        "handover.recordNoThings",
                        "handover.recordNoInstruction",
                        "handover.recordNoWarranty",
                        "handover.recordNoReceipt");
        assertThat(rules().against())
                .extracting(reason -> reason.lift().orElseThrow())
                .allMatch(lift -> lift.startsWith("/handover/WB-1/record"));
    }

    @Test
    void a_whole_record_wants_nothing_but_its_receipt() {
        whole();
        assertThat(keys()).containsExactly("handover.recordNoReceipt");
        signed(1);
        assertThat(keys()).isEmpty();
        assertThat(rules().counting().orElseThrow().inWords()).isEqualTo("Depot foreman, receipt 1");
    }

    @Test
    void nothing_given_and_nobody_instructed_are_answers_too() {
        whole();
        say(new ThingsListed(List.of()));
        assertThat(keys()).containsExactly("handover.recordNoReceipt");
        assertThat(shown()).contains("THINGS\nnothing\n", "nobody instructed: they come next week");
    }

    @Test
    void an_instruction_takes_the_place_of_why_there_was_none() {
        whole();
        say(new Instructed(1, List.of(SOMEBODY), List.of(), "W-1007", List.of("Charging"), DAY));
        assertThat(shown())
                .contains("by W-1007; drivers O-1; workshop none; on Charging")
                .doesNotContain("nobody instructed");
        say(new PartWithdrawn(Sort.INSTRUCTION, 1, "another vehicle"));
        assertThat(keys()).contains("handover.recordNoInstruction");
    }

    @Test
    void a_receipt_stands_for_exactly_what_was_shown() {
        whole();
        signed(1);
        say(snag(1));
        assertThat(keys()).containsExactly("handover.recordReceiptStale");
        assertThat(rules().against().get(0).arguments()).containsExactly("1", "Agreed snags");
        say(new SnagClosed(1, "touched up", Optional.empty()));
        assertThat(keys()).as("shown again as it was").isEmpty();
        say(new StateRead(612_061, 84, "Bay 1"));
        assertThat(rules().against().get(0).arguments()).containsExactly("1", "Odometer, charge and place");
        signed(2);
        assertThat(keys()).isEmpty();
    }

    @Test
    void after_handing_over_the_receipt_stays_whatever_comes() {
        whole();
        say(snag(1));
        signed(1);
        say(new HandedOver("Depot foreman, receipt 1", List.of()));
        say(new SnagClosed(1, "touched up", Optional.empty()));
        assertThat(rules().counting()).isPresent();
        assertThat(rules().closed()).extracting(Reason::key).containsExactly("handover.recordClosed");
    }

    @Test
    void a_receipt_that_nobody_signed_is_said_so() {
        whole();
        say(new ReceiptMissing(
                1, file(), rules().shown().parts(), Absence.REFUSED, "will not sign for the scratch", "W-1011"));
        assertThat(keys()).isEmpty();
        assertThat(rules().counting().orElseThrow().inWords()).isEqualTo("nobody, receipt 1 refused");
    }

    @Test
    void what_is_shown_holds_photographs_by_their_fingerprints_and_no_names() {
        whole();
        say(new ConditionPictured(1, "Nearside", "Scratch", EvidenceFile.of(new byte[] {1}, "image/png")));
        assertThat(shown())
                .contains("photograph 1: Nearside; Scratch; ", "operator Vale and Fen")
                .contains(EvidenceFile.of(new byte[] {1}, "image/png").sha256());
        assertThat(rules().shown().fingerprint()).isEqualTo(file().sha256());
        say(new PartWithdrawn(Sort.PICTURE, 1, "another vehicle"));
        assertThat(shown()).doesNotContain("photograph 1");
    }

    @Test
    void people_of_others_are_counted_over_all_that_names_them() {
        say(snag(1));
        say(new Instructed(1, List.of(SOMEBODY), List.of(SOMEBODY), "W-1007", List.of("Charging"), DAY));
        assertThat(rules().record().token(0)).isEqualTo("O-4");
        whole();
        signed(1);
        assertThat(rules().record().token(0)).isEqualTo("O-5");
        assertThat(rules().record().outsider(1, "hash").token()).isEqualTo("O-6");
    }

    @Test
    void a_receipt_waits_for_the_record_and_for_the_end_of_the_line() {
        assertThat(rules().againstReceipt())
                .extracting(Reason::key)
                .startsWith("handover.recordNotFinished", "handover.recordNoState");
    }

    private void whole() {
        say(new StateRead(612_060, 84, "Bay 1"));
        say(new ThingsListed(List.of(new Thing("Vehicle keys", 2))));
        say(new InstructionOmitted("they come next week"));
        say(new WarrantyBegun(DAY, 612_060, "Conversion, 24 months"));
    }

    private void signed(int receipt) {
        say(new ReceiptSigned(
                receipt, file(), rules().shown().parts(), SOMEBODY, "Depot foreman", Manner.TYPED, Optional.empty()));
    }

    private static SnagAgreed snag(int number) {
        return new SnagAgreed(
                number, "Scratch", "Offside", SOMEBODY, Optional.of("W-1007"), "Touch up", DAY.plusDays(30));
    }

    private EvidenceFile file() {
        return EvidenceFile.of(rules().shown().bytes(), "text/plain");
    }

    private String shown() {
        return new String(rules().shown().bytes(), StandardCharsets.UTF_8);
    }

    private List<String> keys() {
        return rules().against().stream().map(Reason::key).toList();
    }

    private RecordRules rules() {
        History history = new History(Subject.workOrder("WB-1"), entries);
        return RecordRules.of(history, WorkOrder.of(history).orElseThrow(), Optional.empty());
    }

    private void say(Saying saying) {
        int number = entries.size() + 1;
        entries.add(new Entry(
                new UUID(0, number),
                Subject.workOrder("WB-1"),
                number,
                Moment.of("W-1014", Instant.parse("2026-03-10T09:00:00Z")),
                "h" + number,
                saying));
    }
}
