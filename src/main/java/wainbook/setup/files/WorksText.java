package wainbook.setup.files;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A works written as the files that it would be read from. Comments are not kept: nothing on record says them. */
public final class WorksText {

    private static final CsvMapper CSV = new CsvMapper();

    private static final YAMLMapper YAML = YAMLMapper.builder()
            .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
            .disable(YAMLGenerator.Feature.SPLIT_LINES)
            .enable(YAMLGenerator.Feature.INDENT_ARRAYS_WITH_INDICATOR)
            .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private WorksText() {}

    /** The text of every file by its path. */
    public static Map<String, String> of(WorksFiles files) {
        WorksFiles ordered = files.inOrder();
        var texts = new TreeMap<String, String>();
        ObjectNode works = Node.of(ordered.works());
        texts.put(Part.WORKS.file(), yaml(works.set("operators", array(Part.OPERATORS.nodes(ordered)))));
        texts.put(Part.ROUTES.file(), yaml(array(Part.ROUTES.nodes(ordered))));
        Part.tables().forEach(part -> texts.put(part.file(), csv(part, ordered)));
        for (Part part : List.of(Part.SHEETS, Part.ISOLATION_PLANS, Part.OUTLINES)) {
            part.nodes(ordered).forEach(node -> texts.put(part.file() + "/" + part.key(node) + ".yaml", yaml(node)));
        }
        return texts;
    }

    private static ArrayNode array(List<ObjectNode> nodes) {
        return JsonNodeFactory.instance.arrayNode().addAll(nodes);
    }

    private static String yaml(JsonNode node) {
        try {
            return YAML.writeValueAsString(node);
        } catch (JsonProcessingException unwritable) {
            throw new IllegalStateException(unwritable);
        }
    }

    private static String csv(Part part, WorksFiles files) {
        List<String> header = part.columns().all();
        var text = new StringWriter();
        try (SequenceWriter lines = CSV.writer().writeValues(text)) {
            lines.write(header);
            for (ObjectNode node : part.nodes(files)) {
                lines.write(
                        header.stream().map(column -> cell(node.path(column))).toList());
            }
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        return text.toString();
    }

    private static String cell(JsonNode value) {
        if (!value.isArray()) {
            return value.isBigDecimal() ? value.decimalValue().toPlainString() : value.asText();
        }
        List<String> words = new ArrayList<>();
        value.forEach(word -> words.add(word.asText()));
        return String.join(";", words);
    }
}
