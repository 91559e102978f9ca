package wainbook.setup.taking.page;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import wainbook.setup.files.Found;

/**
 * What was read of files that somebody sent, while they look at it. In memory and for half an hour: the files hold
 * people's names, which are not to lie about.
 */
@ApplicationScoped
class Uploads {

    private record Upload(String who, Found found) {}

    private final Cache<UUID, Upload> kept = Caffeine.newBuilder()
            .expireAfterWrite(Duration.ofMinutes(30))
            .maximumSize(20)
            .build();

    UUID keep(String who, Found found) {
        UUID id = UUID.randomUUID();
        kept.put(id, new Upload(who, found));
        return id;
    }

    /** Only for whoever sent it. */
    Optional<Found> of(UUID id, String who) {
        return Optional.ofNullable(kept.getIfPresent(id))
                .filter(upload -> upload.who().equals(who))
                .map(Upload::found);
    }

    void done(UUID id) {
        kept.invalidate(id);
    }
}
