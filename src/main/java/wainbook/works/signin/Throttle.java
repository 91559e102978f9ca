package wainbook.works.signin;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.Stream;

/**
 * Slows guessing down, by account and by address. A delay that grows and no lock-out: a lock-out would let anybody stop
 * a shift by typing somebody's name.
 */
@ApplicationScoped
public class Throttle {

    static final int FREE_TRIES = 3;
    static final Duration LONGEST = Duration.ofMinutes(1);

    private record Failures(int count, Instant last) {
        Instant openAt() {
            int beyond = count - FREE_TRIES;
            if (beyond < 0) {
                return last;
            }
            Duration delay = Duration.ofSeconds(1L << Math.min(beyond, 6));
            return last.plus(delay.compareTo(LONGEST) > 0 ? LONGEST : delay);
        }
    }

    private final Clock clock;
    private final Cache<String, Failures> failures =
            Caffeine.newBuilder().maximumSize(10_000).build();

    Throttle(Clock clock) {
        this.clock = clock;
    }

    /** How long the account or address must still wait; zero when it may try now. */
    public Duration wait(String account, String address) {
        Instant now = clock.instant();
        return keys(account, address)
                .map(key -> failures.getIfPresent(key))
                .filter(known -> known != null && known.openAt().isAfter(now))
                .map(known -> Duration.between(now, known.openAt()))
                .max(Duration::compareTo)
                .orElse(Duration.ZERO);
    }

    public void failed(String account, String address) {
        Instant now = clock.instant();
        keys(account, address)
                .forEach(key -> failures.asMap()
                        .merge(key, new Failures(1, now), (had, one) -> new Failures(had.count() + 1, now)));
    }

    /** The account knows its password. The address keeps its count, or one good account would cover for guessing. */
    public void passed(String account) {
        failures.invalidate("account " + account);
    }

    private static Stream<String> keys(String account, String address) {
        return Stream.of("account " + account, "address " + address);
    }
}
