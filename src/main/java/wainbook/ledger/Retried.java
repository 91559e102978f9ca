package wainbook.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.act.Reason;

/** Whether a request that comes under a known id is the same request, or another one under the same id. */
final class Retried {

    private Retried() {}

    /** The reason against it, naming the field that differs; empty if it is the same request again. */
    static Optional<Reason> difference(Asked asked, Moment moment, Entry recorded) {
        if (!asked.says().isInstance(recorded.saying())) {
            return Optional.of(other(asked, "kind"));
        }
        if (!asked.writes().get(0).equals(recorded.subject())) {
            return Optional.of(other(asked, "subject"));
        }
        if (!moment.who().equals(recorded.moment().who())) {
            return Optional.of(other(asked, "who"));
        }
        JsonNode body = CanonicalJson.tree(recorded.saying());
        return fields(CanonicalJson.tree(asked))
                .filter(field ->
                        body.has(field.getKey()) && !body.get(field.getKey()).equals(field.getValue()))
                .findFirst()
                .map(field -> other(asked, field.getKey()));
    }

    private static Stream<Map.Entry<String, JsonNode>> fields(JsonNode tree) {
        return tree.properties().stream();
    }

    private static Reason other(Asked asked, String field) {
        return Reason.of("ledger.otherUnderSameId", Reason.WORKS_RULE, asked.id(), field);
    }
}
