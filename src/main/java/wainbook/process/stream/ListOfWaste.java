package wainbook.process.stream;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The entries of the List of Waste (Decision 2000/532/EC) that this trade meets. What is not here is unknown: the program never
 * guesses what an entry means.
 *
 * @param source of the entries
 */
public record ListOfWaste(String source, List<Row> entries) {

    /** How an entry is decided. */
    public enum Kind {
        /** Hazardous, whatever is in it. */
        HAZARDOUS,
        /** One of a pair: somebody assesses which of the two it is. */
        MIRROR,
        /** Never hazardous under this entry. */
        PLAIN
    }

    /** How well an entry is known here. */
    public enum Standing {
        SEEN,
        SECOND_HAND,
        MEMORY
    }

    /** Where a mass of it counts in the form of ISO 22628 unless its return says otherwise. */
    public enum Group {
        PRE_TREATMENT,
        DISMANTLED,
        METALS,
        REST
    }

    /**
     * One entry.
     *
     * @param code as the List writes it
     * @param title shortened
     * @param twin the other of a mirror pair
     * @param note what the trade chooses, or keeps an eye on
     */
    public record Row(
            String code,
            String title,
            Kind kind,
            Optional<String> twin,
            Group group,
            boolean liquid,
            Standing standing,
            Optional<String> note) {

        public WasteCode waste() {
            return new WasteCode(WasteCode.digits(code).orElseThrow(), WasteCode.marked(code));
        }

        public boolean hazardous() {
            return WasteCode.marked(code);
        }
    }

    private static final class Ours {
        static final ListOfWaste LIST = read("/rules/list-of-waste.yaml");

        private Ours() {}
    }

    public ListOfWaste {
        entries = List.copyOf(entries);
        Map<String, Row> byDigits = byDigits(entries);
        for (Row row : entries) {
            boolean fits = (row.kind() == Kind.PLAIN) != row.hazardous() || row.kind() == Kind.MIRROR;
            boolean paired = row.twin()
                    .map(twin ->
                            WasteCode.digits(twin).filter(byDigits::containsKey).isPresent())
                    .orElse(row.kind() != Kind.MIRROR);
            if (!fits || !paired) {
                throw new IllegalArgumentException(row.code() + " does not agree with its kind or its twin");
            }
        }
    }

    /** The list that the program carries. */
    public static ListOfWaste ours() {
        return Ours.LIST;
    }

    /**
     * The entry that is meant by {@code 160107}, {@code 16 01 07} or {@code 16 01 07*}. An asterisk may be left out; one that the
     * List does not have makes another entry of it, and so none.
     */
    public Optional<Row> find(String text) {
        return WasteCode.digits(text)
                .flatMap(digits -> entries.stream()
                        .filter(row -> row.waste().digits().equals(digits))
                        .findFirst())
                .filter(row -> row.hazardous() || !WasteCode.marked(text));
    }

    private static Map<String, Row> byDigits(List<Row> entries) {
        var byDigits = new LinkedHashMap<String, Row>();
        for (Row row : entries) {
            if (byDigits.put(row.waste().digits(), row) != null) {
                throw new IllegalArgumentException(row.code() + " stands twice");
            }
        }
        return byDigits;
    }

    static ListOfWaste read(String path) {
        try (InputStream file = ListOfWaste.class.getResourceAsStream(path)) {
            return YAMLMapper.builder()
                    .addModule(new Jdk8Module())
                    .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
                    .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
                    .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build()
                    .readValue(file, ListOfWaste.class);
        } catch (IOException broken) {
            throw new UncheckedIOException("the List of Waste", broken);
        }
    }
}
