package wainbook.handover.road;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.gate.GateRules;
import wainbook.handover.Standing;
import wainbook.handover.document.Document;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.line.LineSaying.RoadReleaseEnded;
import wainbook.line.LineSaying.RoadReleased;
import wainbook.line.road.RoadUse;
import wainbook.station.StationSaying.Held;
import wainbook.works.Person;
import wainbook.works.signin.Passwords;

/** Signs the gate before any use on a road, and takes the signature back. */
@ApplicationScoped
public class RoadRelease {

    private static final int LONGEST = 80;
    private static final int LONGEST_REASON = 2000;

    /**
     * What is asked.
     *
     * @param fingerprint of the evidence the signer looked at
     * @param driver the number of the person who drives
     */
    public record ToRelease(
            UUID id, String order, String fingerprint, String driver, String plates, String insurance, String password)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return RoadReleased.class;
        }
    }

    /** @param reason may be blank: whoever sees a danger need not write first */
    public record ToEnd(UUID id, String order, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return RoadReleaseEnded.class;
        }
    }

    private final Ledger ledger;
    private final RoadLook look;
    private final Passwords passwords;

    RoadRelease(Ledger ledger, RoadLook look, Passwords passwords) {
        this.ledger = ledger;
        this.look = look;
        this.passwords = passwords;
    }

    public Outcome<Entry> release(ToRelease asked, Actor actor) {
        Optional<Reason> unsigned = passwords.against(actor.who(), asked.password());
        if (unsigned.isPresent()) {
            return Outcome.refused(unsigned.get());
        }
        Subject subject = Subject.workOrder(asked.order());
        return ledger.write(
                asked,
                actor,
                reading -> look.at(reading.of(subject), reading.moment())
                        .map(rules -> release(asked, rules))
                        .orElseGet(() -> notFound(asked.order())));
    }

    private Decision release(ToRelease asked, RoadRules rules) {
        var against = new ArrayList<>(rules.against());
        if (!rules.evidence().fingerprint().equals(asked.fingerprint())) {
            against.add(Reason.of("gate.changedSinceSeen", Reason.WORKS_RULE, asked.order()));
        }
        missing(asked.plates(), "handover.roadPlatesMissing", "#plates").ifPresent(against::add);
        missing(asked.insurance(), "handover.roadInsuranceMissing", "#insurance")
                .ifPresent(against::add);
        Optional<Person> driver = driver(asked.driver());
        if (driver.isEmpty()) {
            against.add(
                    Reason.of("handover.roadDriverMissing", Reason.WORKS_RULE).liftedAt("#driver"));
        }
        driver.map(rules::against).ifPresent(against::addAll);
        return against.isEmpty()
                ? Decision.say(Subject.workOrder(asked.order()), released(asked, rules, driver.orElseThrow()))
                : Decision.refuse(against);
    }

    private Optional<Person> driver(String number) {
        return Optional.of(number)
                .filter(code -> code.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}"))
                .map(look::person)
                .filter(person -> !person.roles().isEmpty() && !person.left());
    }

    private static Optional<Reason> missing(String text, String key, String field) {
        return text.isBlank() || text.length() > LONGEST
                ? Optional.of(Reason.of(key, Reason.WORKS_RULE, LONGEST).liftedAt(field))
                : Optional.empty();
    }

    private static RoadReleased released(ToRelease asked, RoadRules rules, Person driver) {
        return new RoadReleased(
                rules.use().next(),
                asked.fingerprint(),
                driver.number(),
                Stream.of(rules.signer().competence(GateRules.COMPETENCE), driver.competence(RoadRules.DRIVER))
                        .flatMap(Optional::stream)
                        .map(held -> new Held(held.code(), held.level(), held.validTo()))
                        .toList(),
                asked.plates(),
                asked.insurance(),
                rules.beforeRoadUse().stream()
                        .filter(document -> document.standing() == Standing.IN_HAND)
                        .map(Document::id)
                        .toList());
    }

    /** Whoever they are and however the vehicle stands: it can always be kept off the road. */
    public Outcome<Entry> end(ToEnd asked, Actor actor) {
        Subject subject = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            if (asked.reason().length() > LONGEST_REASON) {
                return Decision.refuse(Reason.of("handover.tooLong", Reason.WORKS_RULE, LONGEST_REASON)
                        .liftedAt("#reason"));
            }
            return RoadUse.of(reading.of(subject))
                    .inForce()
                    .map(release -> Decision.say(subject, new RoadReleaseEnded(release.number(), asked.reason())))
                    .orElseGet(() ->
                            Decision.refuse(Reason.of("handover.roadNothingToEnd", Reason.WORKS_RULE, asked.order())));
        });
    }

    static Decision notFound(String order) {
        return Decision.refuse(Reason.of("order.notFound", Reason.WORKS_RULE, order));
    }
}
