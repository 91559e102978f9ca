package wainbook.paper;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.arc.Arc;
import java.util.Map;

/** Forms as a script sends them. */
final class Forms {

    private Forms() {}

    static Map<?, ?> json(Object form) {
        try {
            ObjectMapper mapper = Arc.container().instance(ObjectMapper.class).get();
            return mapper.readValue(mapper.writeValueAsString(form), Map.class);
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
