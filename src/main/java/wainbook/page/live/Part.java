package wainbook.page.live;

import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** A part of a page and who looks at it. Drawn by one thread only. */
final class Part {

    private final Supplier<String> draw;
    private final Set<Listener> listeners = ConcurrentHashMap.newKeySet();
    private Optional<Seen> seen = Optional.empty();
    private String drawn = "";

    Part(Supplier<String> draw) {
        this.draw = draw;
    }

    Set<Listener> listeners() {
        return listeners;
    }

    void joins(Listener listener) {
        listeners.add(listener);
        if (listener.isGone()) {
            listeners.remove(listener);
        }
    }

    /** It may be gone before it has joined. */
    void leaves(Listener listener) {
        listener.goes();
        listeners.remove(listener);
    }

    String drawn(Seen now) {
        if (!seen.equals(Optional.of(now))) {
            drawn = draw.get();
            seen = Optional.of(now);
        }
        return drawn;
    }

    void tell(Seen now, boolean beat) {
        if (!listeners.isEmpty()) {
            boolean changed = !seen.equals(Optional.of(now));
            String part = drawn(now);
            listeners.forEach(listener -> listener.hears(part, changed || beat));
            if (beat) {
                listeners.forEach(Listener::beat);
            }
        }
    }
}
