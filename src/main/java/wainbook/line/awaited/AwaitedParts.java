package wainbook.line.awaited;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.line.LineSaying.PartAwaited;
import wainbook.line.LineSaying.PartCame;

/** All parts that were ever awaited for one vehicle, in the order in which they were missed. */
public record AwaitedParts(Map<Integer, AwaitedPart> byNumber) {

    private static final AwaitedParts NONE = new AwaitedParts(Map.of());

    public static AwaitedParts of(History history) {
        return history.folded(AwaitedParts.class, NONE, AwaitedParts::after);
    }

    private AwaitedParts after(Entry entry) {
        if (entry.saying() instanceof PartAwaited said) {
            return with(of(said.awaited())
                    .map(known -> known.expected(said.expectedOn()))
                    .orElseGet(() -> AwaitedPart.of(said, entry.moment().at())));
        }
        if (entry.saying() instanceof PartCame said) {
            return of(said.awaited())
                    .map(known -> with(known.came(said, entry.moment().at())))
                    .orElse(this);
        }
        return this;
    }

    private AwaitedParts with(AwaitedPart part) {
        Map<Integer, AwaitedPart> more = new LinkedHashMap<>(byNumber);
        more.put(part.number(), part);
        return new AwaitedParts(more);
    }

    public List<AwaitedPart> all() {
        return List.copyOf(byNumber.values());
    }

    public Optional<AwaitedPart> of(int number) {
        return Optional.ofNullable(byNumber.get(number));
    }

    public List<AwaitedPart> open() {
        return byNumber.values().stream().filter(AwaitedPart::isOpen).toList();
    }

    public List<AwaitedPart> openAt(Optional<String> stage) {
        return open().stream()
                .filter(part -> stage.filter(part.stage()::equals).isPresent())
                .toList();
    }

    int next() {
        return byNumber.size() + 1;
    }
}
