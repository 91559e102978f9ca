package wainbook.permit.rule;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.act.Reason;
import wainbook.permit.Permit;
import wainbook.permit.PermitSaying.PermitIssued;
import wainbook.permit.PermitSaying.Ticked;
import wainbook.permit.Precaution;
import wainbook.permit.Precaution.Names;
import wainbook.permit.Trait;
import wainbook.works.CompetenceRule;
import wainbook.works.Role;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRule;

/** Whether a permit may be issued: one method a rule, all of them asked. */
public final class IssueRules {

    /** Lets a person issue permits who is neither works engineer nor team leader. */
    static final String ISSUER = "PERMIT-ISSUER";

    private static final int LONGEST = 500;

    private final PermitIssued wanted;
    private final String issuer;
    private final AtHand atHand;
    private final List<Reason> against = new ArrayList<>();

    private IssueRules(PermitIssued wanted, String issuer, AtHand atHand) {
        this.wanted = wanted;
        this.issuer = issuer;
        this.atHand = atHand;
    }

    /** @param others open permits on the same vehicle or at the same place */
    public static List<Reason> against(PermitIssued wanted, String issuer, List<Permit> others, AtHand atHand) {
        var rules = new IssueRules(wanted, issuer, atHand);
        mayIssue(issuer, atHand).ifPresent(rules.against::add);
        rules.receiver();
        rules.words();
        rules.time();
        rules.precautions();
        rules.against.addAll(conflicts(wanted, others, atHand));
        return List.copyOf(rules.against);
    }

    public static Optional<Reason> mayIssue(String issuer, AtHand atHand) {
        boolean may = atHand.person()
                .apply(issuer)
                .filter(person -> person.roles().contains(Role.WORKS_ENGINEER)
                        || person.roles().contains(Role.TEAM_LEADER)
                        || CompetenceRule.against(person, ISSUER, atHand.today())
                                .isEmpty())
                .isPresent();
        return may ? Optional.empty() : Optional.of(Reason.of("permit.mayNotIssue", Reason.WORKS_RULE, ISSUER));
    }

    /** What this permit, those that are open, and the vehicle cannot be together. */
    public static List<Reason> conflicts(PermitIssued wanted, List<Permit> others, AtHand atHand) {
        Set<Trait> mine = wanted.sort().with(wanted.circumstances());
        var against = new ArrayList<Reason>();
        Conflict.between(mine, atHand.ofVehicle()).forEach(pair -> against.add(clash(pair, wanted.permit())));
        Conflict.between(mine, mine).forEach(pair -> against.add(clash(pair, wanted.permit())));
        others.forEach(other ->
                Conflict.between(mine, other.traits()).forEach(pair -> against.add(clash(pair, other.number()))));
        atHand.onPaper()
                .forEach(paper -> Conflict.between(mine, paper.written().traits())
                        .forEach(pair -> against.add(clash(pair, paper.form()))));
        return against;
    }

    private static Reason clash(Conflict pair, Object permit) {
        return Reason.of(pair.rule(), Reason.PRACTICE, permit);
    }

    private void receiver() {
        if (wanted.receiver().equals(issuer)) {
            refuse("permit.twoPeople", "#receiver");
        } else if (!atWork(wanted.receiver())) {
            refuse("permit.personUnknown", "#receiver", wanted.receiver());
        }
    }

    private boolean atWork(String number) {
        return atHand.person().apply(number).filter(person -> !person.left()).isPresent();
    }

    private void words() {
        if (wanted.work().isBlank() || wanted.work().length() > LONGEST) {
            refuse("permit.workMissing", "#work");
        }
        if (wanted.place()
                .filter(place -> place.isBlank() || place.length() > 80)
                .isPresent()) {
            refuse("permit.placeMissing", "#place");
        }
    }

    private void time() {
        Instant until = wanted.validUntil();
        Optional<Instant> latest = atHand.latestEnd();
        if (latest.isEmpty()) {
            refuse("permit.offShift", "#validUntil");
        } else if (!until.isAfter(atHand.now()) || until.isAfter(latest.get())) {
            refuse("permit.beyondShift", "#validUntil", latest.get());
        }
    }

    private void precautions() {
        for (Set<Precaution> group : wanted.sort().asks()) {
            boolean seenTo =
                    wanted.precautions().stream().map(Ticked::precaution).anyMatch(group::contains);
            if (!seenTo) {
                Precaution first = group.stream().min(Precaution::compareTo).orElseThrow();
                against.add(Reason.of("permit.precautionMissing", Reason.PRACTICE, first.name())
                        .liftedAt("#" + first.name()));
            }
        }
        wanted.precautions().forEach(this::naming);
    }

    private void naming(Ticked ticked) {
        Precaution precaution = ticked.precaution();
        String field = "#" + precaution.name();
        Optional<String> named = ticked.naming().filter(text -> !text.isBlank());
        if (named.isEmpty()) {
            if (mustName(precaution)) {
                refuse("permit.nameMissing", field);
            }
        } else if (precaution.names() == Names.PERSON) {
            person(precaution, named.get());
        } else if (precaution.namesGear()) {
            against.addAll(gear(precaution, named.get()));
        } else if (named.get().length() > LONGEST) {
            refuse("permit.nameMissing", field);
        }
    }

    private boolean mustName(Precaution precaution) {
        return switch (precaution.names()) {
            case NOTHING, GEAR_IF_USED -> false;
            case PERSON, WORDS, GEAR -> true;
            case GEAR_IF_KEPT -> precaution.gear().stream().anyMatch(atHand.kept()::contains);
        };
    }

    private void person(Precaution precaution, String number) {
        if (!atWork(number)) {
            refuse("permit.personUnknown", "#" + precaution.name(), number);
        } else if (number.equals(wanted.receiver())) {
            refuse("permit.notTheReceiver", "#" + precaution.name());
        }
    }

    private List<Reason> gear(Precaution precaution, String code) {
        Optional<Instrument> known = atHand.gear().apply(code);
        String kind = known.map(Instrument::kind)
                .filter(precaution.gear()::contains)
                .orElseGet(
                        () -> precaution.gear().stream().min(String::compareTo).orElseThrow());
        return InstrumentRule.against(known, kind, List.of(), atHand.today()).stream()
                .map(reason -> reason.liftedAt("#" + precaution.name()))
                .toList();
    }

    private void refuse(String key, String field, Object... arguments) {
        against.add(Reason.of(key, Reason.WORKS_RULE, arguments).liftedAt(field));
    }
}
