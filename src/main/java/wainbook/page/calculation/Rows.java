package wainbook.page.calculation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.page.Words;

/**
 * A list of things with parts of their own, as people write it: a line for each, semicolons or tabs between its parts, so that
 * rows can be pasted from a spreadsheet.
 */
final class Rows {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final String CELLS = "[;\\t]";

    private Rows() {}

    /** Whether a field of this type can be written in rows: lists of lists, and lists of records whose parts fit a cell. */
    static boolean fit(AnnotatedType type) {
        if (Types.raw(type) != List.class) {
            return false;
        }
        Class<?> element = Types.raw(Types.argument(type, 0));
        if (element == List.class) {
            return true;
        }
        return element.isRecord()
                && Arrays.stream(element.getRecordComponents())
                        .map(RecordComponent::getAnnotatedType)
                        .allMatch(Rows::fitsCell);
    }

    /** What a row holds, in words. */
    static String hint(String calculation, AnnotatedType type) {
        AnnotatedType element = Types.argument(type, 0);
        if (Types.raw(element).isRecord()) {
            return Words.of(
                    "engineering.rowsHint",
                    Arrays.stream(Types.raw(element).getRecordComponents())
                            .map(part -> Asked.label(calculation, part.getName()))
                            .collect(Collectors.joining("; ")));
        }
        boolean nested = Types.raw(Types.argument(element, 0)) == List.class;
        return Words.of(nested ? "engineering.nestedHint" : "engineering.groupsHint");
    }

    /** @param cell reads one cell as what its type says */
    static ArrayNode read(AnnotatedType element, String text, BiFunction<AnnotatedType, String, JsonNode> cell) {
        ArrayNode rows = JSON.arrayNode();
        text.lines().filter(line -> !line.isBlank()).forEach(line -> rows.add(row(element, line, cell)));
        return rows;
    }

    private static JsonNode row(AnnotatedType element, String line, BiFunction<AnnotatedType, String, JsonNode> cell) {
        if (Types.raw(element).isRecord()) {
            return parts(Types.raw(element).getRecordComponents(), line, cell);
        }
        if (Types.raw(Types.argument(element, 0)) != List.class) {
            return cell.apply(element, line.strip());
        }
        ArrayNode inner = JSON.arrayNode();
        Stream.of(line.split(CELLS)).forEach(part -> inner.add(cell.apply(Types.argument(element, 0), part.strip())));
        return inner;
    }

    /** A cell too many is kept under its place, so that it is found at fault. */
    private static ObjectNode parts(
            RecordComponent[] parts, String line, BiFunction<AnnotatedType, String, JsonNode> cell) {
        ObjectNode row = JSON.objectNode();
        List<String> cells = List.of(line.split(CELLS));
        for (int i = 0; i < cells.size(); i++) {
            String written = cells.get(i).strip();
            if (i >= parts.length) {
                row.put(String.valueOf(i + 1), written);
            } else if (!written.isEmpty()) {
                row.set(parts[i].getName(), cell.apply(parts[i].getAnnotatedType(), written));
            }
        }
        return row;
    }

    private static boolean fitsCell(AnnotatedType type) {
        Class<?> raw = Types.raw(type);
        if (raw == Optional.class || raw == List.class) {
            return fitsCell(Types.argument(type, 0)) && Types.raw(Types.argument(type, 0)) != List.class;
        }
        return raw.isEnum() || Scalar.of(raw).isPresent();
    }
}
