package wainbook.bench;

import io.quarkus.arc.Arc;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import wainbook.isolation.Isolation;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Kinds;
import wainbook.ledger.bytes.Sentences;
import wainbook.order.WorkOrder;
import wainbook.process.Releases;
import wainbook.process.sheet.CheckSheet;
import wainbook.station.StageRecord;

/** What it costs to see from a vehicle's entries how it stands, beside reading them from their bytes. */
final class FoldingAHistory {

    private static final String READING = "read the same entries from their bytes";

    private final OwnRecord record;
    private final Kinds kinds = Arc.container().instance(Kinds.class).get();

    private FoldingAHistory(OwnRecord record) {
        this.record = record;
    }

    static List<Comparison> of(OwnRecord record) {
        var folding = new FoldingAHistory(record);
        return List.of(
                folding.comparison("see how far a whole vehicle has come", WorkOrder::of),
                folding.comparison("follow every isolation of a whole vehicle", Isolation::of),
                folding.comparison("see how every stage of a whole vehicle stands", folding.stages()));
    }

    private Comparison comparison(String what, Function<History, ?> fold) {
        return new Comparison(what, record.entries().size(), () -> asking(fold), READING, () -> this::read);
    }

    private Callable<?> asking(Function<History, ?> fold) {
        History history = record.unasked();
        return () -> fold.apply(history);
    }

    private Function<History, List<StageRecord>> stages() {
        Releases releases = Arc.container().instance(Releases.class).get();
        Map<String, CheckSheet> sheets = new HashMap<>();
        return history -> {
            WorkOrder order = WorkOrder.of(history).orElseThrow();
            return order.gates().stream()
                    .flatMap(stage -> StageRecord.of(
                            history,
                            order,
                            stage,
                            (code, revision) -> sheets.computeIfAbsent(
                                    code + "/" + revision, sheet -> releases.sheet(code, revision)))
                            .stream())
                    .toList();
        };
    }

    private List<Entry> read() {
        return record.texts().stream().map(text -> Sentences.read(text, kinds)).toList();
    }
}
