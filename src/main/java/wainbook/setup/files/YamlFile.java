package wainbook.setup.files;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** A YAML file as a tree, and the place in the text of everything in it by JSON pointer (RFC 6901). */
record YamlFile(String name, JsonNode root, Map<String, Place> places) {

    private static final YAMLMapper MAPPER = YAMLMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    static Optional<YamlFile> read(TextFile file, List<Fault> faults) {
        try {
            Node composed = new Yaml(new LoaderOptions()).compose(new StringReader(file.text()));
            if (composed == null) {
                faults.add(Fault.of(Place.of(file.name()), "fileEmpty", "nothing", "fields"));
                return Optional.empty();
            }
            var walk = new Walk(file.name(), new HashMap<>(), new ArrayList<>());
            walk.through(composed, "");
            faults.addAll(walk.doubled);
            return walk.doubled.isEmpty()
                    ? Optional.of(new YamlFile(file.name(), MAPPER.readTree(file.text()), walk.places))
                    : Optional.empty();
        } catch (MarkedYAMLException broken) {
            faults.add(Fault.of(mark(file.name(), broken.getProblemMark()), "notYaml", broken.getProblem(), "YAML"));
        } catch (JsonProcessingException broken) {
            faults.add(Fault.of(
                    Place.at(
                            file.name(),
                            broken.getLocation().getLineNr(),
                            broken.getLocation().getColumnNr()),
                    "notYaml",
                    broken.getOriginalMessage(),
                    "YAML"));
        }
        return Optional.empty();
    }

    /** The place of a pointer, or of the nearest thing around it when it is not there. */
    Place place(String pointer) {
        String at = pointer;
        while (!places.containsKey(at)) {
            at = at.substring(0, at.lastIndexOf('/'));
        }
        return pointer.isEmpty()
                ? places.get(at)
                : places.get(at).field(pointer.substring(pointer.lastIndexOf('/') + 1));
    }

    private static Place mark(String file, Mark mark) {
        return Place.at(file, mark.getLine() + 1, mark.getColumn() + 1);
    }

    private record Walk(String file, Map<String, Place> places, List<Fault> doubled) {

        void through(Node node, String pointer) {
            places.put(pointer, mark(file, node.getStartMark()));
            if (node instanceof MappingNode mapping) {
                var keys = new HashSet<String>();
                for (NodeTuple tuple : mapping.getValue()) {
                    String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "?";
                    if (!keys.add(key)) {
                        doubled.add(Fault.of(
                                mark(file, tuple.getKeyNode().getStartMark()).field(key),
                                "fieldTwice",
                                key,
                                "one of it"));
                    }
                    through(tuple.getValueNode(), pointer + "/" + key);
                }
            } else if (node instanceof SequenceNode sequence) {
                for (int i = 0; i < sequence.getValue().size(); i++) {
                    through(sequence.getValue().get(i), pointer + "/" + i);
                }
            }
        }
    }
}
