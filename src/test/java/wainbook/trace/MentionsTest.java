package wainbook.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.isolation.IsolationSaying;
import wainbook.ledger.Entry;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.matter.MatterSaying;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Place;
import wainbook.order.OrderSaying.Rebound;
import wainbook.order.duty.Chosen;
import wainbook.order.specification.SpecificationSaying.Specified;
import wainbook.permit.PermitSaying.PermitIssued;
import wainbook.permit.Work;
import wainbook.process.sheet.Condition;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Attended;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.SoftwareRead;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.StationSaying.Verdict;
import wainbook.waste.WasteSaying.Collected;
import wainbook.waste.WasteSaying.Placed;
import wainbook.waste.WasteSaying.Share;
import wainbook.waste.note.Note;

/** Whatever has a number of its own is named by the entry that speaks of it. */
class MentionsTest {

    private static final Instant AT = Instant.parse("2026-05-04T08:00:00Z");
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
    private static final About ABOUT = new About("controls", "CTRL-BUS12", 2, "bms", List.of());
    private static final Basis BASIS = new Basis(Condition.NONE, Optional.empty(), Optional.empty());
    private static final EvidenceFile FILE = new EvidenceFile("0".repeat(64), "image/png", 1);

    @Test
    void software_is_named_by_module_with_version_and_by_version_alone() {
        assertThat(codes(new SoftwareRead(ABOUT, BASIS, "BMS", "7.0.3", "7.0.3", Verdict.PASS)))
                .contains("SOFTWARE BMS7.0.3", "SOFTWARE 7.0.3");
    }

    @Test
    void a_check_sheet_is_named_with_its_revision_wherever_a_vehicle_is_bound_to_it() {
        var second = new Binding("controls", "CTRL-BUS12", 2);
        assertThat(codes(new Moved(
                        Direction.FORWARD,
                        place("packs"),
                        place("controls"),
                        Optional.of(second),
                        List.of(),
                        Optional.empty())))
                .contains("SHEET_REVISION CTRL-BUS12/2");
        assertThat(codes(new Rebound(second, new Binding("controls", "CTRL-BUS12", 3), List.of())))
                .contains("SHEET_REVISION CTRL-BUS12/3")
                .doesNotContain("SHEET_REVISION CTRL-BUS12/2");
    }

    @Test
    void a_specification_names_the_revision_of_the_parts_it_was_worked_from() {
        assertThat(codes(new Specified(new Chosen(
                        4,
                        "PK-66",
                        3,
                        new UUID(0, 1),
                        new UUID(0, 2),
                        List.of(),
                        List.of(),
                        new Chosen.Figures(null, null, null, null, null, null)))))
                .contains("PARTS_REVISION PARTS/3");
    }

    @Test
    void nonconformities_and_permits_are_named_with_their_order_since_they_are_numbered_within_it() {
        assertThat(codes(new MatterSaying.NonconformityOpened(
                        2, "controls", Optional.empty(), MatterSaying.Cause.REPORTED, "Cracked", Optional.empty())))
                .contains("NONCONFORMITY WB-0142/2");
        assertThat(codes(new PermitIssued(
                        5, Work.HOT_WORK, Optional.empty(), "Cut the stud", List.of(), List.of(), "W-1", AT)))
                .contains("PERMIT WB-0142/5");
    }

    @Test
    void a_lock_and_a_container_are_named() {
        assertThat(codes(new IsolationSaying.LockedOn("LK-07", "T-1", new IsolationSaying.Level(2, AT))))
                .contains("LOCK LK-07");
        assertThat(codes(new Placed("n1", "Oil", "C-0101", "13 02 05*", BigDecimal.ONE)))
                .contains("CONTAINER C-0101");
    }

    @Test
    void whoever_stood_by_or_did_it_by_the_paper_is_named_besides_who_recorded_it() {
        assertThat(codes(new Attended(ABOUT, BASIS, "done", "Pit 1", "W-1002", Verdict.PASS)))
                .contains("PERSON W-1001", "PERSON W-1002");
        assertThat(codes(new TakenFromPaper("F-0001", FILE, "W-1003", AT, "W-1004", "W-1005", ABOUT)))
                .contains("PERSON W-1003");
    }

    @Test
    void a_note_names_every_vehicle_whose_waste_it_takes_and_no_other_entry_of_a_container_does() {
        var checked = new Note.Checked("Carrier", "CR-1", DAY, "W-1001");
        var note = new Note(
                Note.Sort.of(true),
                "WAINWO/A0101",
                DAY,
                "Works",
                "29.20",
                "Conversion",
                "13 02 05*",
                "Oil",
                "",
                "HP 14",
                "drum",
                "",
                BigDecimal.TEN,
                Optional.empty(),
                checked,
                "ZZ21",
                checked);
        var shares = List.of(share("WB-0142", "n1"), share("WB-0143", "n1"), share("WB-0143", "n2"));
        var entry = new Entry(
                new UUID(0, 1),
                new Subject(Subject.Sort.CONTAINER, "C-0101"),
                7,
                Moment.of("W-1001", AT),
                "0".repeat(64),
                new Collected(note, BigDecimal.TEN, shares));
        assertThat(Mentions.in(entry)).extracting(Mentions.Of::order).containsExactlyInAnyOrder("WB-0142", "WB-0143");
        assertThat(Mentions.in(entry)).extracting(one -> one.mention().code()).containsOnly("WAINWO/A0101");
    }

    @Test
    void a_thing_that_goes_by_two_codes_is_shown_as_one() {
        assertThat(mentions(new SoftwareRead(ABOUT, BASIS, "BMS", "7.0.3", "7.0.3", Verdict.PASS)))
                .filteredOn(mention -> mention.sort() == Mention.Sort.SOFTWARE)
                .extracting(Mention::shown)
                .containsOnly("BMS 7.0.3");
    }

    @Test
    void every_sort_has_its_words_in_the_singular_and_as_a_heading() {
        for (Mention.Sort sort : Mention.Sort.values()) {
            assertThat(sort.word()).isNotBlank();
            assertThat(sort.words()).isNotBlank();
        }
    }

    private static Share share(String order, String thing) {
        return new Share(order, thing, "Oil", BigDecimal.ONE, BigDecimal.ONE);
    }

    private static Place place(String stage) {
        return new Place(Optional.of(stage), "ST-1");
    }

    private static Set<String> codes(Saying saying) {
        return mentions(saying).stream()
                .map(mention -> mention.sort() + " " + mention.code())
                .collect(Collectors.toSet());
    }

    private static List<Mention> mentions(Saying saying) {
        var entry = new Entry(
                new UUID(0, 1), Subject.workOrder("WB-0142"), 3, Moment.of("W-1001", AT), "0".repeat(64), saying);
        return Mentions.in(entry).stream().map(Mentions.Of::mention).toList();
    }
}
