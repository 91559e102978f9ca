package wainbook.isolation.step;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.isolation.Isolation;
import wainbook.isolation.Mentioned;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.fact.Instrument;
import wainbook.isolation.fact.Limits;
import wainbook.isolation.fact.Person;
import wainbook.isolation.fact.Register;
import wainbook.isolation.paper.PaperIsolations;
import wainbook.isolation.permit.WorkUnderPermit;
import wainbook.isolation.proof.Proof;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Place;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.hold.StandingHolds;
import wainbook.process.Releases;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Source;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** Brings together what is true today outside a vehicle's own isolation: people, instruments, plan, shift, register. */
@ApplicationScoped
public class FactsNow {

    /** The competences by which people are authorised here; a works names its own course records under them. */
    public static final String COMPETENCE = "HV";

    public static final String ISSUER = "HV-ISSUER";

    private static final String CODE = "[A-Za-z0-9][A-Za-z0-9._-]{0,79}";

    private final Ledger ledger;
    private final Releases releases;
    private final WorksDay day;
    private final WorkUnderPermit work;
    private final StandingHolds holds;

    FactsNow(Ledger ledger, Releases releases, WorksDay day, WorkUnderPermit work, StandingHolds holds) {
        this.ledger = ledger;
        this.releases = releases;
        this.day = day;
        this.work = work;
        this.holds = holds;
    }

    /** For judging a step or a person's work: whom the isolation rests on, and whom {@code also} names. */
    public Facts of(History vehicle, Moment moment, Mentioned also) {
        WorkOrder order = order(vehicle);
        var barring = new ArrayList<>(work.barringEnergising(vehicle));
        barring.addAll(PaperIsolations.of(vehicle).open());
        return facts(
                vehicle,
                order,
                moment,
                also,
                ledger::history,
                releases.plan(order.ordered().variant()),
                Set.copyOf(LockRow.elsewhere(order.number())),
                barring);
    }

    /**
     * The same as it was for a moment that is past, for what was done on paper then: people, instruments, plan and register as
     * they were on record. Which locks and testers were elsewhere is not known of a time when nobody told the tool.
     */
    public Facts then(History vehicle, Moment moment, Mentioned also) {
        History then = vehicle.upTo(moment.at());
        return facts(
                then,
                WorkOrder.of(then).orElseGet(() -> order(vehicle)),
                moment,
                also,
                subject -> ledger.history(subject).upTo(moment.at()),
                releases.planAt(order(vehicle).ordered().variant(), moment.at()),
                Set.of(),
                work.barringEnergising(then));
    }

    private Facts facts(
            History vehicle,
            WorkOrder order,
            Moment moment,
            Mentioned also,
            Function<Subject, History> records,
            Optional<Plan> plan,
            Set<String> locksElsewhere,
            List<String> barring) {
        Mentioned all = Mentioned.in(Isolation.of(vehicle)).and(also).and(Mentioned.people(moment.who()));
        Predicate<String> isCode = text -> text.matches(CODE);
        return new Facts(
                mayBeWorkedOn(order)
                        && holds.against(order, moment.at(), Stops.WORK).isEmpty(),
                order.at().map(Place::place),
                plan,
                Limits.usual(),
                day.isolatorMayIssue(),
                day.shiftEnd(moment.at()).orElse(moment.at()),
                all.people().stream()
                        .filter(isCode)
                        .map(who -> person(records.apply(Subject.person(who)), moment.at()))
                        .toList(),
                all.instruments().stream()
                        .filter(isCode)
                        .flatMap(code -> instrument(
                                records.apply(Subject.instrument(code)),
                                usedElsewhere(code, order.number(), moment.at()))
                                .stream())
                        .toList(),
                Register.of(records.apply(Subject.works())),
                locksElsewhere,
                plan.map(FactsNow::sources).orElse(List.of()),
                barring);
    }

    private static WorkOrder order(History vehicle) {
        return WorkOrder.of(vehicle)
                .orElseThrow(() -> new IllegalArgumentException("no work order " + vehicle.subject()));
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
        return person(ledger.history(Subject.person(number)), now);
    }

    private Person person(History record, Instant now) {
        var person = wainbook.works.Person.of(record);
        LocalDate today = day.of(now);
        var held = person.competence(COMPETENCE).filter(known -> !person.left());
        boolean begun = held.filter(known -> !today.isBefore(known.validFrom())).isPresent();
        return new Person(
                person.number(),
                begun ? held.get().level() : 0,
                held.map(known -> day.endOf(known.validTo())).orElse(Instant.EPOCH),
                held.flatMap(wainbook.works.Person.Competence::withdrawnAt),
                person.competence(ISSUER).filter(known -> known.validOn(today)).isPresent() && !person.left(),
                person.roles().contains(Role.LINE_MANAGER) && !person.left());
    }

    private Optional<Instrument> instrument(History record, Optional<String> elsewhere) {
        return wainbook.works.instruments.Instrument.of(record)
                .map(known -> new Instrument(
                        known.code(),
                        sort(known.kind()),
                        known.unit().equals("V") ? known.upper() : BigDecimal.ZERO,
                        known.due().map(day::endOf).orElse(Instant.EPOCH),
                        known.withdrawnAt(),
                        elsewhere));
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
