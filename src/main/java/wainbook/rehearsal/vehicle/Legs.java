package wainbook.rehearsal.vehicle;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.gate.GateRules;
import wainbook.gate.SignOff;
import wainbook.handover.HandingOver;
import wainbook.handover.HandoverSaying;
import wainbook.handover.Noting;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.issue.IssueRules;
import wainbook.handover.issue.Issuing;
import wainbook.handover.requirement.Rule;
import wainbook.line.move.Move;
import wainbook.order.Intake;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.FactStated;
import wainbook.order.Ordering;
import wainbook.rehearsal.chance.Odds;
import wainbook.rehearsal.scenario.Scenario;
import wainbook.setup.DemoWorks;
import wainbook.station.ItemState;
import wainbook.station.entry.Voiding;
import wainbook.works.Person;
import wainbook.works.Role;

/** One vehicle's way from the order to the handover, one call for each leg of it. */
public final class Legs {

    private static final List<String> CLEAR = List.of("people-and-tools-clear", "steering-and-brakes-or-tow-plan");

    /** Clock minutes for a planned minute of a survey. */
    public static final double SURVEYING = 0.6;

    private final AtVehicle at;
    private final Scenario.Kind kind;
    private final Map<String, String> operators;
    private final Answers answers;
    private final Odds odds;

    /** @param operators their names by code */
    public Legs(AtVehicle at, Scenario.Kind kind, Map<String, String> operators, Answers answers, Odds odds) {
        this.at = at;
        this.kind = kind;
        this.operators = operators;
        this.answers = answers;
        this.odds = odds;
    }

    public void ordered(Instant when, LocalDate promised) {
        at.clock.waitUntil(when);
        String operator = at.dice.one(kind.operators());
        at.done(
                at.acts.ordering.order(
                        new Ordering.ToOrder(
                                at.dice.id(),
                                at.order,
                                operators.getOrDefault(operator, operator),
                                kind.variant(),
                                kind.route(),
                                promised,
                                kind.facts().entrySet().stream()
                                        .map(fact -> new FactStated(fact.getKey(), fact.getValue()))
                                        .toList()),
                        at.inOffice(at.crew.anyone(Role.WORKS_ENGINEER, at.dice))),
                "order");
        kind.specification().ifPresent(asked -> new Specified(at, asked).duty());
    }

    /** The donor's survey, up to a share of its items; accepted where all of it is done. */
    public void surveyed(Instant when, double share) {
        at.clock.waitUntil(when);
        received();
        String stage = at.vehicle().stage().orElseThrow();
        work(stage, 0, SURVEYING).upTo(share);
        if (share >= 1) {
            sign(stage);
            kind.specification().ifPresent(asked -> new Specified(at, asked).choice());
        }
    }

    public void received() {
        at.done(
                at.acts.intake.receive(
                        new Intake.ToReceive(
                                at.dice.id(),
                                at.order,
                                answers.vin(),
                                SerialForm.of(kind.registration()).text(at.dice),
                                at.dice.between(
                                        kind.odometerKm().get(0),
                                        kind.odometerKm().get(1))),
                        at.inOffice(at.crew.anyone(Role.TECHNICIAN, at.dice))),
                "donor");
    }

    /** Onto a station of the line, the first one or the next. */
    public void onto(Instant when, String station, Direction direction) {
        at.clock.waitUntil(when);
        move(direction, station, Optional.empty());
    }

    public StageWork work(String stage, int station, double pace) {
        return new StageWork(at, stage, station, answers, odds, pace);
    }

    public void sign(String stage) {
        at.pass(at.dice.between(2.0, 5.0));
        if (at.dice.falls(odds.refused())) {
            refuse(stage);
        }
        String inspector = inspector(stage);
        at.done(
                at.acts.signing.sign(
                        new SignOff.ToSign(
                                at.dice.id(),
                                at.order,
                                stage,
                                rules(stage, inspector).gate().fingerprint(),
                                DemoWorks.PASSWORD),
                        at.as(inspector)),
                "sign " + stage);
    }

    /** Sent back for one item, which is done again. */
    private void refuse(String stage) {
        String inspector = inspector(stage);
        GateRules rules = rules(stage, inspector);
        List<ItemState> simple = rules.gate().record().items().stream()
                .filter(item -> item.passing().isPresent())
                .filter(item -> item.item().condition() == wainbook.process.sheet.Condition.NONE)
                .filter(item -> item.item().parts().isEmpty())
                .toList();
        if (simple.isEmpty()) {
            return;
        }
        ItemState item = at.dice.one(simple);
        at.done(
                at.acts.signing.refuse(
                        new SignOff.ToRefuse(
                                at.dice.id(),
                                at.order,
                                stage,
                                rules.gate().fingerprint(),
                                List.of(item.key()),
                                "Does not look as recorded: do it again and record it",
                                false),
                        at.as(inspector)),
                "refuse");
        at.pass(at.dice.between(2.0, 4.0));
        var entry = item.passing().orElseThrow();
        at.done(
                at.acts.voiding.voidEntry(
                        new Voiding.ToVoid(at.dice.id(), at.order, entry.id(), "Refused at the gate"),
                        at.as(entry.moment().who())),
                "void");
        work(stage, 0, 0.3).upTo(1);
        at.pass(2);
    }

    /** Whoever may sign: competent, and no hand in the work. */
    private String inspector(String stage) {
        List<String> able = at.crew.inspectors().stream()
                .map(Person::number)
                .filter(number -> rules(stage, number).against().stream()
                        .map(Reason::key)
                        .noneMatch(key -> key.equals("gate.ownWork") || key.startsWith("works.")))
                .toList();
        if (able.isEmpty()) {
            throw new IllegalStateException("nobody may sign " + stage + " of " + at.order + ": "
                    + at.crew.inspectors().stream()
                            .map(person -> person.number() + " "
                                    + rules(stage, person.number()).against())
                            .toList());
        }
        return at.dice.one(able);
    }

    private GateRules rules(String stage, String person) {
        return at.done(at.acts.gates.at(at.history(), stage, at.as(person).at(at.now())), "gate");
    }

    public void out() {
        at.pass(2);
        move(Direction.OUT, SignOff.YARD, Optional.empty());
    }

    public void aside(String bay, String why) {
        at.pass(2);
        move(Direction.OFF_LINE, bay, Optional.of(why));
    }

    private void move(Direction direction, String to, Optional<String> reason) {
        at.done(
                at.acts.moving.move(
                        new Move.ToMove(
                                at.dice.id(),
                                at.order,
                                direction,
                                to,
                                Optional.empty(),
                                CLEAR,
                                reason,
                                Optional.empty()),
                        at.inOffice(at.crew.anyone(Role.LINE_MANAGER, at.dice))),
                direction + " " + to);
    }

    /** The papers as they come in, so many of those that keep the vehicle here. */
    public void documents(Instant when, double share, Instant end) {
        at.clock.waitUntil(when);
        String clerk = at.crew.anyone(Role.HANDOVER_CLERK, at.dice);
        List<Document> missing = set().documents().stream()
                .filter(document -> document.standing().isOpen())
                .toList();
        inHand(clerk, missing.subList(0, (int) Math.round(missing.size() * share)), end);
    }

    /** Those alone without which the vehicle may not leave; the others follow. */
    public void neededDocuments(Instant when) {
        at.clock.waitUntil(when);
        inHand(at.crew.anyone(Role.HANDOVER_CLERK, at.dice), set().barring(), Instant.MAX);
    }

    /** Documents of the works itself, by whoever is appointed; those that the record has the figures for. */
    public void issued() {
        String signer = AtVehicle.needed(
                at.crew.with(Role.QUALITY_ENGINEER).stream()
                        .filter(person ->
                                person.competence(IssueRules.COMPETENCE).isPresent())
                        .map(Person::number)
                        .findFirst(),
                "documents of the works");
        if ("true".equals(at.vehicle().facts().get("emission_claim"))) {
            new CarbonStatedHere(at).stated();
        }
        for (String document : List.of("weight-record", "high-voltage-record", "carbon-statement")) {
            if (!ready(document, signer)) {
                continue;
            }
            at.pass(at.dice.between(2.0, 5.0));
            at.done(
                    at.acts.issuing.issue(
                            new Issuing.ToIssue(at.dice.id(), at.order, document, DemoWorks.PASSWORD, Optional.empty()),
                            at.inOffice(signer)),
                    document);
        }
    }

    private boolean ready(String document, String signer) {
        return at.acts
                .issues
                .one(at.history(), document, Moment.of(signer, at.now()))
                .filter(rules -> rules.against().isEmpty())
                .isPresent();
    }

    private void inHand(String clerk, List<Document> documents, Instant end) {
        for (Document document : documents) {
            at.pass(at.dice.between(0.5, 2.0));
            if (at.now().isAfter(end)) {
                return;
            }
            at.done(
                    at.acts.noting.note(
                            new Noting.ToNote(
                                    at.dice.id(),
                                    at.order,
                                    document.id(),
                                    HandoverSaying.State.IN_HAND,
                                    document.id() + "/" + at.dice.digits(5),
                                    document.rule().validUntil(at.acts.handoverRecords.today(at.now())),
                                    Optional.empty(),
                                    ""),
                            at.inOffice(clerk)),
                    document.id());
        }
    }

    public void appointments() {
        inHand(at.crew.anyone(Role.HANDOVER_CLERK, at.dice), noticesBeforeRoadUse(), Instant.MAX);
        new AfterTheLine(at).pass();
    }

    public void handedOver() {
        at.pass(at.dice.between(5.0, 15.0));
        var bay = new GivenOver(at);
        bay.recorded();
        String receiver = bay.receipted();
        at.pass(at.dice.between(0.5, 1.5));
        at.done(
                at.acts.handing.handOver(
                        new HandingOver.ToHandOver(at.dice.id(), at.order, receiver, Optional.empty()),
                        at.inOffice(at.crew.anyone(Role.HANDOVER_CLERK, at.dice))),
                "handover");
    }

    private List<Document> noticesBeforeRoadUse() {
        return set().barring().stream()
                .filter(document -> document.rule().due() == Rule.Due.BEFORE_ROAD_USE)
                .toList();
    }

    private DocumentSet set() {
        return at.acts.documents.documents(at.history(), at.vehicle(), at.now()).orElseThrow();
    }
}
