package wainbook.handover.carbon;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.handover.carbon.CarbonSaying.Used;

/** The sets of factors that the program carries, by year. */
public record CarbonSets(String region, List<CarbonSet> sets, CarbonSets.Packs packs) {

    /** What is proposed for the making of packs, in kilograms a kilowatt-hour. */
    public record Packs(BigDecimal low, BigDecimal mid, BigDecimal high, String source) {}

    private static final JsonMapper YAML = JsonMapper.builder(new YAMLFactory())
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private static final CarbonSets LOADED = load();

    public CarbonSets {
        sets = sets.stream().sorted(Comparator.comparingInt(CarbonSet::year)).toList();
    }

    public static CarbonSets loaded() {
        return LOADED;
    }

    public Optional<CarbonSet> of(int year) {
        return sets.stream().filter(set -> set.year() == year).findFirst();
    }

    /** The newest that was read as a whole. */
    public Optional<CarbonSet> newestWhole() {
        return sets.stream().filter(CarbonSet::whole).max(Comparator.comparingInt(CarbonSet::year));
    }

    /**
     * Every factor of a year; one that was not read is the last of a year before it. What is borrowed names its own year. Good
     * for looking, not for a statement.
     */
    public List<Used> borrowed(int year) {
        return Arrays.stream(Factor.values())
                .flatMap(factor -> last(factor, year).stream())
                .toList();
    }

    private Optional<Used> last(Factor factor, int year) {
        Stream<CarbonSet> past = sets.stream().filter(set -> set.year() <= year);
        return past.flatMap(set -> set.used(factor).stream()).reduce((before, later) -> later);
    }

    private static CarbonSets load() {
        try (InputStream file = CarbonSets.class.getResourceAsStream("/rules/carbon-factors.yaml")) {
            return YAML.readValue(file, CarbonSets.class);
        } catch (IOException broken) {
            throw new UncheckedIOException("carbon factors", broken);
        }
    }
}
