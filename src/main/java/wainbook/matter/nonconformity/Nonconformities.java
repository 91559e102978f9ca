package wainbook.matter.nonconformity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.matter.MatterSaying;

/** All nonconformities of one work order: a fold of its stream. */
public record Nonconformities(List<Nonconformity> all) {

    public Nonconformities {
        all = List.copyOf(all);
    }

    public static Nonconformities of(History history) {
        var all = new ArrayList<Nonconformity>();
        for (Entry entry : history.entries()) {
            if (entry.saying() instanceof MatterSaying.NonconformityOpened opened) {
                all.add(new Nonconformity(
                        opened,
                        entry.moment().who(),
                        entry.moment().at(),
                        entry.number(),
                        Optional.empty(),
                        Optional.empty(),
                        0));
            } else if (entry.saying() instanceof MatterSaying.Disposed disposed) {
                all.replaceAll(known -> known.number() == disposed.nonconformity()
                        ? new Nonconformity(
                                known.opened(),
                                known.openedBy(),
                                known.since(),
                                known.openedAt(),
                                Optional.of(disposed),
                                Optional.of(entry.moment().who()),
                                entry.number())
                        : known);
            }
        }
        return new Nonconformities(all);
    }

    public int next() {
        return all.size() + 1;
    }

    public Optional<Nonconformity> number(int number) {
        return all.stream().filter(known -> known.number() == number).findFirst();
    }

    public List<Nonconformity> awaitingDisposition() {
        return all.stream().filter(Nonconformity::awaitsDisposition).toList();
    }

    public List<Nonconformity> of(String item) {
        return all.stream()
                .filter(known -> known.opened().item().equals(Optional.of(item)))
                .toList();
    }
}
