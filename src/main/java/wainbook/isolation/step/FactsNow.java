package wainbook.isolation.step;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.isolation.Facts;
import wainbook.isolation.Instrument;
import wainbook.isolation.Isolation;
import wainbook.isolation.Limits;
import wainbook.isolation.Mentioned;
import wainbook.isolation.Person;
import wainbook.isolation.Proof;
import wainbook.isolation.Register;
import wainbook.isolation.WorkUnderPermit;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Place;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.process.Releases;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Source;
import wainbook.works.Role;
import wainbook.works.WorksDay;

/** Brings together what is true today outside a vehicle's own isolation: people, instruments, plan, shift, register. */
@ApplicationScoped
public class FactsNow {

    /** The competences by which people are authorised here; a works names its own course records under them. */
    public static final String COMPETENCE = "HV";

    public static final String ISSUER = "HV-ISSUER";

    private final Ledger ledger;
    private final Releases releases;
    private final WorksDay day;
    private final WorkUnderPermit work;

    FactsNow(Ledger ledger, Releases releases, WorksDay day, WorkUnderPermit work) {
        this.ledger = ledger;
        this.releases = releases;
        this.day = day;
        this.work = work;
    }

    /** For judging a step or a person's work: whom the isolation rests on, and whom {@code also} names. */
    public Facts of(History vehicle, Moment moment, Mentioned also) {
        Mentioned all = Mentioned.in(Isolation.of(vehicle)).and(also).and(Mentioned.people(moment.who()));
        WorkOrder order = WorkOrder.of(vehicle)
                .orElseThrow(() -> new IllegalArgumentException("no work order " + vehicle.subject()));
        Optional<Plan> plan = releases.plan(order.ordered().variant());
        return new Facts(
                mayBeWorkedOn(order),
                order.at().map(Place::place),
                plan,
                Limits.usual(),
                day.isolatorMayIssue(),
                day.shiftEnd(moment.at()).orElse(moment.at()),
                all.people().stream().map(who -> person(who, moment.at())).toList(),
                all.instruments().stream()
                        .flatMap(code -> instrument(code, order.number(), moment.at()).stream())
                        .toList(),
                Register.of(ledger.history(Subject.works())),
                Set.copyOf(LockRow.elsewhere(order.number())),
                plan.map(FactsNow::sources).orElse(List.of()),
                work.barringEnergising(vehicle));
    }

    /** For what concerns the register alone and no vehicle. */
    public Facts ofTheRegister(Moment moment) {
        return new Facts(
                false,
                Optional.empty(),
                Optional.empty(),
                Limits.usual(),
                false,
                moment.at(),
                List.of(person(moment.who(), moment.at())),
                List.of(),
                Register.of(ledger.history(Subject.works())),
                Set.of(),
                List.of(),
                List.of());
    }

    private static boolean mayBeWorkedOn(WorkOrder order) {
        return (order.phase() == Phase.ON_LINE || order.phase() == Phase.OFF_LINE)
                && order.holdsThatStop(Stops.WORK).isEmpty();
    }

    private static List<String> sources(Plan plan) {
        return Stream.concat(plan.sources().stream(), plan.later().stream())
                .map(Source::code)
                .toList();
    }

    public Person person(String number, Instant now) {
        var person = wainbook.works.Person.of(ledger.history(Subject.person(number)));
        LocalDate today = day.of(now);
        var held = person.competence(COMPETENCE).filter(known -> !person.left());
        boolean begun = held.filter(known -> !today.isBefore(known.validFrom())).isPresent();
        return new Person(
                number,
                begun ? held.get().level() : 0,
                held.map(known -> day.endOf(known.validTo())).orElse(Instant.EPOCH),
                held.flatMap(wainbook.works.Person.Competence::withdrawnAt),
                person.competence(ISSUER).filter(known -> known.validOn(today)).isPresent() && !person.left(),
                person.roles().contains(Role.LINE_MANAGER) && !person.left());
    }

    private Optional<Instrument> instrument(String code, String order, Instant now) {
        return Optional.of(code)
                .filter(text -> text.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,79}"))
                .flatMap(text -> wainbook.works.Instrument.of(ledger.history(Subject.instrument(text))))
                .map(known -> new Instrument(
                        code,
                        sort(known.kind()),
                        known.unit().equals("V") ? known.upper() : BigDecimal.ZERO,
                        known.due().map(day::endOf).orElse(Instant.EPOCH),
                        known.withdrawnAt(),
                        usedElsewhere(code, order, now)));
    }

    /** The works' kinds of instrument, as this room tells them apart. */
    public static Instrument.Sort sort(String kind) {
        return switch (kind) {
            case "voltage-tester" -> Instrument.Sort.TWO_POLE_DETECTOR;
            case "multimeter" -> Instrument.Sort.MULTIMETER;
            case "proving-unit" -> Instrument.Sort.DIRECT_VOLTAGE_PROVING_UNIT;
            case "insulation-tester" -> Instrument.Sort.INSULATION_TESTER;
            case "gloves" -> Instrument.Sort.GLOVES;
            default -> Instrument.Sort.OTHER;
        };
    }

    /** Where a proof with this tester is under way: begun, not closed, and its window not over. */
    private Optional<String> usedElsewhere(String tester, String order, Instant now) {
        return new HashSet<>(ProvingRow.with(tester))
                .stream()
                        .filter(other -> !other.equals(order))
                        .filter(other -> {
                            var there = Isolation.of(ledger.history(Subject.workOrder(other)))
                                    .at(now);
                            return there.proof()
                                            .filter(proof -> proof.tester().equals(tester))
                                            .flatMap(Proof::testerProvedAgainAt)
                                            .isEmpty()
                                    && there.provingEndsAt()
                                            .filter(end -> !now.isAfter(end))
                                            .isPresent();
                        })
                        .findFirst();
    }
}
