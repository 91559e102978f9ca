package wainbook.trace.campaign.scope;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.Returned;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.trace.JointRevisions;
import wainbook.trace.Mention;
import wainbook.trace.TracedRow;
import wainbook.trace.Undone;
import wainbook.trace.campaign.CampaignSaying.Because;
import wainbook.trace.campaign.CampaignSaying.InScope;
import wainbook.trace.campaign.CampaignSaying.Query;
import wainbook.trace.campaign.CampaignSaying.Term;
import wainbook.trace.campaign.Whose;
import wainbook.works.shift.WorksDay;

/**
 * Finds the vehicles that a query means. An entry that was voided since still brings its vehicle in: whether only the number was
 * wrong, or the part was never there, is for a person to find out.
 */
@ApplicationScoped
public class Scope {

    /** An instrument may have been used on a vehicle a hundred times; the first of them say enough. */
    private static final int PLACES = 10;

    private final Ledger ledger;
    private final WorksDay day;

    Scope(Ledger ledger, WorksDay day) {
        this.ledger = ledger;
        this.day = day;
    }

    /** Vehicles by number, as they stand now. A donor that was rejected has left the works and is none of it. */
    public List<InScope> find(Query query) {
        List<Map<String, List<Because>>> found = query.terms().stream()
                .map(term -> found(term, sort -> TracedRow.beginning(sort, beginning(term))))
                .map(this::underNewest)
                .toList();
        return Combined.of(query.match(), found).entrySet().stream()
                .flatMap(vehicle -> vehicle(vehicle.getKey(), vehicle.getValue()).stream())
                .filter(vehicle -> vehicle.phase() != Phase.DONOR_REJECTED)
                .toList();
    }

    /** Whether a query means this vehicle, found under any of its orders. */
    public boolean fits(Query query, List<String> orders) {
        List<Map<String, List<Because>>> found = query.terms().stream()
                .map(term -> found(term, sort -> TracedRow.beginning(sort, beginning(term), orders)))
                .map(places -> places.isEmpty()
                        ? Map.<String, List<Because>>of()
                        : Map.of(
                                orders.get(0),
                                places.values().stream().flatMap(List::stream).toList()))
                .toList();
        return !Combined.of(query.match(), found).isEmpty();
    }

    /** The places that were taken back since: a person looks at those before anything is done about the vehicle. */
    public Set<Because> voided(List<InScope> found) {
        return found.stream()
                .flatMap(vehicle -> vehicle.because().stream())
                .filter(this::isVoided)
                .collect(Collectors.toSet());
    }

    private boolean isVoided(Because place) {
        History history = ledger.history(Subject.parse(place.stream()));
        return Undone.is(history.entries().get(Math.toIntExact(place.entry()) - 1), history);
    }

    /** A vehicle as it stands now; empty where there is no such order. */
    public Optional<InScope> vehicle(String order, List<Because> because) {
        History history = ledger.history(Subject.workOrder(order));
        return WorkOrder.of(history).map(known -> {
            Entry last = history.entries().get(history.entries().size() - 1);
            return new InScope(
                    order,
                    known.donor()
                            .map(DonorReceived::vin)
                            .or(() -> known.links().from().map(Returned::vin)),
                    known.ordered().operator(),
                    known.phase(),
                    Whose.operator(known),
                    because.stream().limit(PLACES).toList(),
                    last.number(),
                    last.hash());
        });
    }

    /** A vehicle that came back is one vehicle: it is known by the order under which it came last. */
    private Map<String, List<Because>> underNewest(Map<String, List<Because>> found) {
        Map<String, List<Because>> newest = new LinkedHashMap<>();
        found.forEach((order, places) ->
                newest.computeIfAbsent(newest(order), key -> new ArrayList<>()).addAll(places));
        return newest;
    }

    /** The order under which a vehicle came last. */
    public String newest(String order) {
        String last = order;
        Optional<String> onward = onward(last);
        while (onward.isPresent()) {
            last = onward.get();
            onward = onward(last);
        }
        return last;
    }

    private Optional<String> onward(String order) {
        return WorkOrder.of(ledger.history(Subject.workOrder(order))).flatMap(Whose::onward);
    }

    /** What the code of a row that may fit begins with. */
    private static String beginning(Term term) {
        return term.sort() == Mention.Sort.JOINT_REVISION
                ? JointRevisions.joint(Codes.beginning(term))
                : Codes.beginning(term);
    }

    /** @param rows of a sort, whose code begins as the term does */
    private Map<String, List<Because>> found(Term term, Function<Mention.Sort, List<TracedRow>> rows) {
        return named(term, rows)
                .filter(place -> Codes.fits(term, place.mention().code()))
                .filter(place -> within(term, day.of(place.row().at)))
                .collect(Collectors.groupingBy(
                        place -> place.row().workOrder,
                        LinkedHashMap::new,
                        Collectors.mapping(
                                place -> new Because(
                                        place.mention().sort(),
                                        place.mention().shown(),
                                        place.row().stream().toString(),
                                        place.row().entryNumber),
                                Collectors.toList())));
    }

    private Stream<Place> named(Term term, Function<Mention.Sort, List<TracedRow>> rows) {
        if (term.sort() == Mention.Sort.JOINT_REVISION) {
            JointRevisions revisions = JointRevisions.of(ledger.history(Subject.works()));
            return rows.apply(Mention.Sort.JOINT).stream()
                    .flatMap(row -> revisions.of(row).stream().map(mention -> new Place(row, mention)));
        }
        return rows.apply(term.sort()).stream()
                .map(row -> new Place(row, new Mention(row.traceSort, row.shown, row.code)));
    }

    private record Place(TracedRow row, Mention mention) {}

    private static boolean within(Term term, LocalDate on) {
        return term.from().map(from -> !on.isBefore(from)).orElse(true)
                && term.until().map(until -> !on.isAfter(until)).orElse(true);
    }
}
