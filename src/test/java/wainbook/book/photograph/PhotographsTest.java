package wainbook.book.photograph;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.book.EntryLine;
import wainbook.book.VehicleRecord;
import wainbook.book.VehicleRecord.Fold;
import wainbook.book.telling.Grounds;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.State;
import wainbook.handover.record.RecordSaying.ConditionPictured;
import wainbook.handover.record.RecordSaying.SnagClosed;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.process.sheet.Condition;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Attached;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Voided;
import wainbook.waste.WasteSaying.EngineMadeUnusable;

class PhotographsTest {

    private static final Instant AT = Instant.parse("2026-11-26T09:14:27Z");

    private History history;
    private List<EntryLine> lines;

    @BeforeEach
    void nothing_is_on_record() {
        history = History.empty(Subject.workOrder("WB-1"));
        lines = new ArrayList<>();
    }

    private static EvidenceFile picture(int seed, long bytes) {
        return new EvidenceFile(String.format(java.util.Locale.ROOT, "%08x%056d", seed, 0), "image/jpeg", bytes);
    }

    private void said(String told, Saying saying) {
        history = history.and(new Entry(
                new UUID(0, history.number()),
                history.subject(),
                history.number() + 1,
                Moment.of("W-1019", AT),
                "0".repeat(64),
                saying));
        lines.add(new EntryLine(
                history.number(),
                AT,
                "W-1019",
                "W-1019",
                "station",
                told,
                "",
                Optional.empty(),
                new Grounds(Optional.empty(), List.of()),
                "0".repeat(64),
                List.of()));
    }

    private static Attached attached(EvidenceFile file) {
        return new Attached(
                new About("FINAL", "final-bus12", 1, "labels", List.of()),
                new Basis(Condition.NONE, Optional.empty(), Optional.empty()),
                file);
    }

    private List<Photograph> all(long mostBytes) {
        var record = new VehicleRecord(List.of(new Fold("Stage", lines)), List.of(), "", history.number(), "");
        return Photographs.of(history, record, mostBytes).all();
    }

    @Test
    void every_photograph_is_named_by_its_entry_and_fingerprint_and_says_what_it_shows() {
        said("Photograph the labels", attached(picture(0xabc, 10)));
        said(
                "Engine made unusable",
                new EngineMadeUnusable(
                        "E-1",
                        "hole",
                        LocalDate.EPOCH,
                        picture(1, 10),
                        picture(2, 10),
                        Optional.empty(),
                        Optional.empty()));
        said("Snag 1 closed", new SnagClosed(1, "touched up", Optional.of(picture(3, 10))));
        said("Snag 2 closed", new SnagClosed(2, "touched up", Optional.empty()));

        assertThat(all(1000))
                .extracting(Photograph::name)
                .containsExactly(
                        "photographs/00001-00000abc.jpg",
                        "photographs/00002-00000001.jpg",
                        "photographs/00002-00000002.jpg",
                        "photographs/00003-00000003.jpg");
        assertThat(all(1000))
                .extracting(Photograph::shows)
                .containsExactly(
                        "Photograph the labels",
                        "Engine made unusable · before",
                        "Engine made unusable · after",
                        "Snag 1 closed");
        assertThat(all(1000))
                .allMatch(Photograph::carried)
                .allMatch(one -> one.at().equals(AT));
    }

    @Test
    void documents_reports_and_drawn_signatures_are_no_photographs() {
        said(
                "A scan",
                new DocumentNoted(
                        "GB-02",
                        "V5C",
                        "GB",
                        3,
                        State.IN_HAND,
                        "V5",
                        Optional.empty(),
                        Optional.of(picture(1, 10)),
                        ""));
        said("A report", attached(new EvidenceFile("1".repeat(64), "application/pdf", 10)));
        said("A drawing", attached(new EvidenceFile("2".repeat(64), "image/svg+xml", 10)));

        assertThat(all(1000)).isEmpty();
        assertThat(Photographs.sum(history)).isEqualTo(new Photographs.Sum(0, 0));
    }

    /** The handover's own first, then the oldest; one that is too large makes room for the next. */
    @Test
    void where_a_set_is_full_the_handover_comes_first_and_the_rest_is_said_to_be_left() {
        said("Labels", attached(picture(1, 60)));
        said("Underneath", attached(picture(2, 30)));
        said("Front left", new ConditionPictured(1, "Front left", "", picture(3, 50)));

        List<Photograph> full = all(100);
        assertThat(full).extracting(Photograph::carried).containsExactly(false, true, true);
        assertThat(new Photographs(full).left()).isEqualTo(new Photographs.Sum(1, 60));
        assertThat(new Photographs(full).carried())
                .extracting(Photograph::entry)
                .containsExactly(2L, 3L);
    }

    @Test
    void the_same_file_stands_under_each_entry_and_once_under_one() {
        said("Labels", attached(picture(1, 60)));
        said("Labels again", attached(picture(1, 60)));
        said(
                "Engine made unusable",
                new EngineMadeUnusable(
                        "E-1",
                        "hole",
                        LocalDate.EPOCH,
                        picture(1, 60),
                        picture(1, 60),
                        Optional.empty(),
                        Optional.empty()));

        assertThat(all(200))
                .extracting(Photograph::name)
                .doesNotHaveDuplicates()
                .hasSize(3);
        assertThat(Photographs.sum(history)).isEqualTo(new Photographs.Sum(3, 180));
    }

    @Test
    void a_voided_photograph_stays_on_record_and_does_not_count() {
        said("Labels", attached(picture(1, 60)));
        said("Voided", new Voided(new UUID(0, 0), "labels", "blurred"));
        EntryLine first = lines.get(0);
        lines = List.of(new EntryLine(
                1,
                AT,
                "W-1019",
                "W-1019",
                "station",
                first.what(),
                "",
                Optional.empty(),
                first.grounds(),
                first.hash(),
                List.of(lines.get(1))));

        assertThat(all(100))
                .singleElement()
                .satisfies(one -> assertThat(one.counts()).isFalse());
    }

    @Test
    void megabytes_are_said_to_a_tenth() {
        assertThat(Photographs.megabytes(11_691)).isEqualTo("less than 0.1");
        assertThat(Photographs.megabytes(3_449_000)).isEqualTo("3.4");
    }
}
