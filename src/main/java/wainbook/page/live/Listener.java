package wainbook.page.live;

import io.smallrye.mutiny.subscription.MultiEmitter;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.sse.OutboundSseEvent;
import jakarta.ws.rs.sse.Sse;
import wainbook.page.Globals;

/** One page that looks at a part. It is told the latest only: whoever does not read gathers nothing here. */
final class Listener {

    private final MultiEmitter<? super OutboundSseEvent> emitter;
    private final Sessions.Session session;
    private final Sse sse;
    private String heard = "";
    private volatile boolean gone;

    Listener(MultiEmitter<? super OutboundSseEvent> emitter, Sessions.Session session, Sse sse) {
        this.emitter = emitter;
        this.session = session;
        this.sse = sse;
    }

    void goes() {
        gone = true;
    }

    boolean isGone() {
        return gone;
    }

    boolean is(String person) {
        return session.person().equals(person);
    }

    /** @param asks whether to look the person up again, and not only at what the cookie says */
    void hears(String part, boolean asks) {
        if (!session.lasts() || (asks && !session.admitted())) {
            ended();
        } else if (!part.equals(heard)) {
            heard = part;
            // The version of stylesheet and scripts: a page that has another one loads itself anew.
            emitter.emit(sse.newEventBuilder()
                    .id(Globals.assets())
                    .mediaType(MediaType.TEXT_HTML_TYPE)
                    .data(part)
                    .build());
        }
    }

    /** Keeps proxies open and lets the page notice silence; never in the place of a part that is not taken yet. */
    void beat() {
        if (emitter.requested() > 0) {
            emitter.emit(sse.newEventBuilder().name("beat").data("").build());
        }
    }

    /** The program ends; the page comes back to the next one by itself. */
    void left() {
        emitter.complete();
    }

    void ended() {
        emitter.emit(sse.newEventBuilder().name("ended").data("").build());
        emitter.complete();
    }
}
