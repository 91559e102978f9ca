package wainbook.setup.files;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.util.Locale;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.CheckSheet;

/** One line of a works as a tree in the words of its file. The same thing is always the same tree. */
final class Node {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .addModule(new SimpleModule("words").addSerializer(new InLowerCase()))
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .visibility(PropertyAccessor.GETTER, Visibility.NONE)
            .visibility(PropertyAccessor.IS_GETTER, Visibility.NONE)
            .visibility(PropertyAccessor.FIELD, Visibility.ANY)
            .defaultPropertyInclusion(
                    JsonInclude.Value.construct(JsonInclude.Include.NON_ABSENT, JsonInclude.Include.NON_ABSENT))
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private Node() {}

    static ObjectNode of(Object line) {
        if (line instanceof Lines.Works works) {
            return works(works);
        }
        if (line instanceof Joint joint) {
            return tree(Lines.JointRow.of(joint));
        }
        if (line instanceof Lines.IsolationPlan plan) {
            return tree(PlanFile.lines(PlanFile.plan(plan)));
        }
        return line instanceof CheckSheet sheet ? sheet(sheet) : tree(line);
    }

    /** The works itself; its operators are lines of their own. */
    private static ObjectNode works(Lines.Works works) {
        ObjectNode node = tree(works);
        node.remove("operators");
        ArrayNode shifts = node.putArray("shifts");
        works.shifts().forEach(line -> shifts.add(tree(Lines.ShiftLine.of(line.shift()))));
        if (!works.breaks().isEmpty()) {
            ArrayNode breaks = node.putArray("breaks");
            works.breaks().forEach(line -> breaks.add(tree(Lines.BreakLine.of(line.pause()))));
        }
        if (!works.appointments().isEmpty()) {
            ArrayNode appointments = node.putArray("appointments");
            works.appointments().forEach(line -> appointments.add(tree(Lines.AppointmentLine.of(line.kind()))));
        }
        return node;
    }

    /** As people write a sheet: the items last, and of an item only what is not usual. */
    private static ObjectNode sheet(CheckSheet sheet) {
        ObjectNode node = tree(sheet);
        node.remove("items");
        ArrayNode items = node.putArray("items");
        sheet.items().forEach(item -> items.add(tree(Lines.Item.of(item))));
        return node;
    }

    private static ObjectNode tree(Object line) {
        ObjectNode node = MAPPER.valueToTree(line);
        node.properties()
                .removeIf(
                        field -> field.getValue().isArray() && field.getValue().isEmpty());
        return node;
    }

    /** A word as it stands in a file; a single letter, such as a joint's class, stays as it is. */
    @SuppressWarnings("rawtypes")
    private static final class InLowerCase extends StdSerializer<Enum> {
        private static final long serialVersionUID = 1L;

        InLowerCase() {
            super(Enum.class);
        }

        @Override
        public void serialize(Enum value, JsonGenerator out, SerializerProvider provider) throws IOException {
            String name = value.name();
            out.writeString(name.length() == 1 ? name : name.toLowerCase(Locale.ROOT));
        }
    }
}
