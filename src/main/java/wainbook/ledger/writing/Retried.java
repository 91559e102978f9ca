package wainbook.ledger.writing;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.Optional;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Entry;
import wainbook.ledger.bytes.CanonicalJson;

/** Whether a request that comes under a known id is the same request, or another one under the same id. */
public final class Retried {

    private Retried() {}

    /** The reason against it, naming the field that differs; empty if it is the same request again. */
    public static Optional<Reason> difference(Asked asked, Moment moment, Entry recorded) {
        if (!asked.says().isInstance(recorded.saying())) {
            return Optional.of(other(asked, "kind"));
        }
        if (!asked.writes().get(0).equals(recorded.subject())) {
            return Optional.of(other(asked, "subject"));
        }
        if (!moment.who().equals(recorded.moment().who())) {
            return Optional.of(other(asked, "who"));
        }
        return difference(CanonicalJson.tree(asked), CanonicalJson.tree(recorded.saying()))
                .map(field -> other(asked, field));
    }

    /** Compares each field of the request with the first of the same name in the body, however deep either lies. */
    private static Optional<String> difference(JsonNode request, JsonNode body) {
        for (Map.Entry<String, JsonNode> field : request.properties()) {
            if (field.getValue().isObject()) {
                Optional<String> deeper = difference(field.getValue(), body);
                if (deeper.isPresent()) {
                    return deeper;
                }
            } else {
                JsonNode recorded = body.findValue(field.getKey());
                if (recorded != null && !recorded.equals(field.getValue())) {
                    return Optional.of(field.getKey());
                }
            }
        }
        return Optional.empty();
    }

    private static Reason other(Asked asked, String field) {
        return Reason.of("ledger.otherUnderSameId", Reason.WORKS_RULE, asked.id(), field);
    }
}
