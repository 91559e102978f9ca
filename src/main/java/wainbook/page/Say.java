package wainbook.page;

import static io.quarkus.qute.TemplateExtension.ANY;

import io.quarkus.qute.TemplateExtension;
import java.util.List;
import wainbook.act.Reason;

/** Lets a template write {@code {say:gate.title(number)}}, or {@code {say:key(key)}} where the key is data. */
@TemplateExtension
final class Say {

    /** A room's texts. Shows no property of its own, since every name asked of it is a key. */
    static final class Room {
        private final String name;

        private Room(String name) {
            this.name = name;
        }
    }

    private Say() {}

    @TemplateExtension(namespace = "say", matchName = ANY)
    static Room room(String name) {
        return new Room(name);
    }

    @TemplateExtension(namespace = "say", priority = 10)
    static String key(String key, Object... arguments) {
        return Words.of(key, arguments);
    }

    @TemplateExtension(namespace = "say", priority = 10)
    static List<Refusal> refusals(List<Reason> reasons, Formats formats) {
        return Refusal.of(reasons, formats);
    }

    @TemplateExtension(matchName = ANY)
    static String plain(Room room, String name) {
        return Words.of(room.name + "." + name);
    }

    @TemplateExtension(matchName = ANY)
    static String with(Room room, String name, Object... arguments) {
        return Words.of(room.name + "." + name, arguments);
    }
}
