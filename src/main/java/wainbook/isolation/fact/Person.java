package wainbook.isolation.fact;

import java.time.Instant;
import java.util.Optional;
import wainbook.isolation.IsolationSaying;

/**
 * What the works says today about one person’s high-voltage competence.
 *
 * @param level 0 none or awareness only, 1 instructed, 2 competent, 3 for live work
 * @param validUntil the level is good before this instant
 * @param withdrawnFrom from when on the level is withdrawn, which may lie in the past
 * @param issuer appointed in writing to issue permits
 * @param manager may decide about another person’s lock together with an issuer
 */
public record Person(
        String number,
        int level,
        Instant validUntil,
        Optional<Instant> withdrawnFrom,
        boolean issuer,
        boolean manager) {

    static Person unknown(String number) {
        return new Person(number, 0, Instant.EPOCH, Optional.empty(), false, false);
    }

    public int levelAt(Instant time) {
        return time.isBefore(validUntil) && !doubtedAt(time) ? level : 0;
    }

    public boolean doubtedAt(Instant time) {
        return withdrawnFrom.filter(from -> !from.isAfter(time)).isPresent();
    }

    public IsolationSaying.Level copied() {
        return new IsolationSaying.Level(level, validUntil);
    }
}
