package wainbook.pack.act;

import java.time.LocalDate;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.pack.PackSaying.Authority;
import wainbook.works.CompetenceRule;
import wainbook.works.Person;

/**
 * The level of high-voltage competence that an act at a pack asks for, by the ladder of DGUV Information 209-093 (from a
 * summary); which act asks for which is a works rule.
 */
enum Qualified {
    /** May look at a pack in storage. */
    INSTRUCTED(1),
    /** May receive a pack and measure at its terminals. */
    COMPETENT(2),
    /** May judge a damaged pack. */
    FOR_LIVE_WORK(3);

    static final String COMPETENCE = "HV";

    private final int level;

    Qualified(int level) {
        this.level = level;
    }

    Optional<Reason> against(Person person, LocalDate today) {
        return CompetenceRule.against(person, COMPETENCE, today)
                .or(() -> person.competence(COMPETENCE)
                        .filter(held -> held.level() < level)
                        .map(held ->
                                Reason.of("pack.levelTooLow", Reason.WORKS_RULE, COMPETENCE, level, held.level())));
    }

    static Authority authority(Person person) {
        var held = person.competence(COMPETENCE).orElseThrow();
        return new Authority(held.code(), held.level(), held.validTo());
    }
}
