package wainbook.process.sheet;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import wainbook.predicate.Answer;
import wainbook.predicate.Compiled;
import wainbook.predicate.Predicate;
import wainbook.process.VehicleFacts;

/** Whether an item applies to a vehicle, by what is known of it. */
public final class Applicability {

    /** Conditions were type-checked when their sheet was released; there are as many as released sheets hold. */
    private static final Map<String, Predicate> COMPILED = new ConcurrentHashMap<>();

    private Applicability() {}

    public static Answer of(CheckItem item, Map<String, String> stated) {
        return item.appliesWhen()
                .map(text ->
                        COMPILED.computeIfAbsent(text, Applicability::compile).answer(VehicleFacts.typed(stated)))
                .orElse(Answer.of(true));
    }

    private static Predicate compile(String text) {
        if (VehicleFacts.PREDICATES.compile(text) instanceof Compiled.Sound sound) {
            return sound.predicate();
        }
        throw new IllegalStateException("a released condition does not compile: " + text);
    }
}
