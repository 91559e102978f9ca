package wainbook.safety.visit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.safety.SafetySaying.HostTookOver;
import wainbook.safety.SafetySaying.VisitorEntered;
import wainbook.safety.SafetySaying.VisitorInducted;
import wainbook.safety.SafetySaying.VisitorLeft;

/** Everybody who was ever inducted, and every visit by number from 1. */
public record Visits(List<Visitor> visitors, List<Visit> all) {

    public Visits {
        visitors = List.copyOf(visitors);
        all = List.copyOf(all);
    }

    /** @param works the stream of the works */
    public static Visits of(History works) {
        return works.folded(Visits.class, new Visits(List.of(), List.of()), Visits::and);
    }

    public Optional<Visitor> visitor(String number) {
        return visitors.stream().filter(known -> known.number().equals(number)).findFirst();
    }

    public Optional<Visit> number(int number) {
        return number < 1 || number > all.size() ? Optional.empty() : Optional.of(all.get(number - 1));
    }

    public List<Visit> inside() {
        return all.stream().filter(Visit::inside).toList();
    }

    int next() {
        return all.size() + 1;
    }

    String nextVisitor() {
        return "V-" + (visitors.size() + 1);
    }

    private Visits and(Entry entry) {
        if (entry.saying() instanceof VisitorInducted said) {
            return new Visits(inducted(said.visitor(), entry), all);
        } else if (entry.saying() instanceof VisitorEntered) {
            var more = new ArrayList<>(all);
            more.add(Visit.of(entry));
            return new Visits(visitors, more);
        } else if (entry.saying() instanceof HostTookOver said) {
            return changed(said.visit(), visit -> visit.hostedBy(entry));
        } else if (entry.saying() instanceof VisitorLeft said) {
            return changed(said.visit(), visit -> visit.leftBy(entry));
        }
        return this;
    }

    private List<Visitor> inducted(String number, Entry entry) {
        Map<String, Visitor> known = new LinkedHashMap<>();
        visitors.forEach(visitor -> known.put(visitor.number(), visitor));
        known.merge(number, new Visitor(number, entry.id(), entry), (former, latter) -> former.inductedBy(entry));
        return List.copyOf(known.values());
    }

    private Visits changed(int number, UnaryOperator<Visit> change) {
        return new Visits(
                visitors,
                all.stream()
                        .map(visit -> visit.number() == number ? change.apply(visit) : visit)
                        .toList());
    }
}
