package wainbook.safety.miss;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.act.Reason;
import wainbook.safety.miss.Handling.ToClose;
import wainbook.safety.miss.Handling.ToLookAt;
import wainbook.safety.miss.Reporting.ToTell;
import wainbook.works.Person;
import wainbook.works.Role;

/** Whether words may be added to a near miss, somebody be named who sees to it, and it be closed. Reporting has no rule. */
final class MissRules {

    private static final Set<Role> LOOK =
            Set.of(Role.TEAM_LEADER, Role.LINE_MANAGER, Role.WORKS_ENGINEER, Role.QUALITY_ENGINEER);

    private static final int LONGEST = 2000;

    private MissRules() {}

    static List<Reason> tell(Optional<NearMiss> miss, ToTell asked) {
        var against = new ArrayList<Reason>(known(miss, asked.nearMiss()));
        if (missing(asked.words())) {
            against.add(Reason.of("safety.wordsMissing", Reason.WORKS_RULE).liftedAt("#words"));
        }
        return against;
    }

    static List<Reason> lookAt(
            Optional<NearMiss> miss, ToLookAt asked, Optional<Person> owner, Optional<Person> who, LocalDate today) {
        var against = new ArrayList<Reason>(known(miss, asked.nearMiss()));
        miss.ifPresent(known -> against.addAll(mayLookAt(known, who)));
        if (owner.filter(person -> !person.left()).isEmpty()) {
            against.add(Reason.of("safety.ownerUnknown", Reason.WORKS_RULE).liftedAt("#owner"));
        }
        if (asked.dueOn().isBefore(today)) {
            against.add(Reason.of("safety.dueGone", Reason.WORKS_RULE).liftedAt("#due"));
        }
        return against;
    }

    static List<Reason> close(Optional<NearMiss> miss, ToClose asked, Optional<Person> who) {
        var against = new ArrayList<Reason>(known(miss, asked.nearMiss()));
        miss.ifPresent(known -> against.addAll(mayClose(known, who)));
        if (missing(asked.changed())) {
            against.add(Reason.of("safety.changedMissing", Reason.WORKS_RULE).liftedAt("#changed"));
        }
        return against;
    }

    static List<Reason> mayLookAt(NearMiss miss, Optional<Person> who) {
        return standing(miss, who.filter(MissRules::looks).isPresent(), "safety.mayNotLookAt");
    }

    static List<Reason> mayClose(NearMiss miss, Optional<Person> who) {
        boolean may = who.filter(person -> looks(person) || miss.owner().equals(Optional.of(person.number())))
                .isPresent();
        return standing(miss, may, "safety.mayNotClose");
    }

    private static List<Reason> standing(NearMiss miss, boolean may, String rule) {
        var against = new ArrayList<Reason>();
        if (!miss.open()) {
            against.add(Reason.of("safety.closedAlready", Reason.WORKS_RULE, miss.number()));
        }
        if (!may) {
            against.add(Reason.of(rule, Reason.WORKS_RULE, miss.number()));
        }
        return against;
    }

    private static boolean looks(Person person) {
        return person.roles().stream().anyMatch(LOOK::contains);
    }

    private static List<Reason> known(Optional<NearMiss> miss, int number) {
        return miss.isPresent() ? List.of() : List.of(Reason.of("safety.missNotFound", Reason.WORKS_RULE, number));
    }

    private static boolean missing(String words) {
        return words.isBlank() || words.length() > LONGEST;
    }
}
