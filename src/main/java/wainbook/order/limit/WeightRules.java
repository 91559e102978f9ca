package wainbook.order.limit;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.Source;
import wainbook.order.limit.Legal.Ask;
import wainbook.order.limit.Legal.Cited;

/** The limits of weight of one country or market, in one revision. */
public record WeightRules(
        String set, int revision, List<GrossRule> gross, List<Allowance> allowances, List<AxleRule> axles) {

    public static final List<String> SETS = List.of("GB", "EU", "DE");

    private static final ObjectMapper YAML = YAMLMapper.builder()
            .addModule(new Jdk8Module())
            .addModule(new JavaTimeModule())
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    public WeightRules {
        gross = List.copyOf(gross);
        allowances = List.copyOf(allowances);
        axles = List.copyOf(axles);
    }

    /** The set that the program carries under a name; empty when there is none. */
    public static Optional<WeightRules> named(String set) {
        if (!SETS.contains(set)) {
            return Optional.empty();
        }
        try (InputStream file = WeightRules.class.getResourceAsStream("/rules/weights-" + set + ".yaml")) {
            return Optional.of(YAML.readValue(file, WeightRules.class));
        } catch (IOException broken) {
            throw new UncheckedIOException("limits of weight " + set, broken);
        }
    }

    /** What the vehicle may weigh. While something is asked, the lower figure counts. */
    public Legal gross(Weighed vehicle) {
        List<GrossRule> fitting = gross.stream()
                .filter(rule -> rule.fits(vehicle.axles(), vehicle.body())
                        && rule.force().orElseThrow().on(vehicle.day()))
                .toList();
        Optional<GrossRule> best = fitting.stream()
                .filter(rule -> rule.twinAir().isEmpty() || rule.twinAir().equals(vehicle.twinAir()))
                .max(Comparator.comparingInt(GrossRule::kg));
        if (best.isEmpty()) {
            return Legal.none();
        }
        GrossRule ordinary = best.get();
        var asks = new ArrayList<Ask>();
        if (vehicle.twinAir().isEmpty()
                && fitting.stream().anyMatch(rule -> rule.twinAir().isPresent())) {
            asks.add(Ask.TWIN_AIR);
        }
        var cited = new ArrayList<Cited>();
        cited.add(new Cited(ordinary.id(), ordinary.source()));
        Optional<Integer> spaced = ordinary.bySpacing(vehicle.firstToLastM()).filter(kg -> kg < ordinary.kg());
        spaced.flatMap(kg -> ordinary.perMetreSource()).ifPresent(source -> {
            cited.add(new Cited(ordinary.id(), source));
            if (source.standing() == Source.Standing.MEMORY) {
                asks.add(Ask.SPACING);
            }
        });
        int kg = spaced.orElse(ordinary.kg()) + more(vehicle, spaced.isPresent(), asks, cited);
        return new Legal(Optional.of(kg), cited, asks);
    }

    /** What the vehicle may weigh more than an ordinary one. */
    private int more(Weighed vehicle, boolean spacingGoverns, List<Ask> asks, List<Cited> cited) {
        Optional<Allowance> allowed = allowances.stream()
                .filter(one -> one.fits(vehicle.axles(), vehicle.body()))
                .filter(one -> one.force().orElseThrow().on(vehicle.day()))
                .findFirst();
        boolean doubtful = allowances.stream()
                .filter(one -> one.fits(vehicle.axles(), vehicle.body()))
                .anyMatch(one -> one.force().orElseThrow().doubtfulOn(vehicle.day()));
        if (allowed.isEmpty() && !doubtful) {
            return 0;
        }
        int before = asks.size();
        if (doubtful) {
            asks.add(Ask.DAY_IN_DOUBT);
        }
        if (vehicle.otherEngine().orElse(true)) {
            asks.add(Ask.OTHER_ENGINE);
        }
        boolean flat = allowed.filter(one -> one.by() == Allowance.By.FLAT).isPresent();
        if (!flat && vehicle.extraMassKg().isEmpty()) {
            asks.add(Ask.EXTRA_MASS);
        }
        if (spacingGoverns && !asks.contains(Ask.SPACING)) {
            asks.add(Ask.SPACING);
        }
        if (asks.size() > before || spacingGoverns || allowed.isEmpty()) {
            return 0;
        }
        cited.add(new Cited(allowed.get().id(), allowed.get().source()));
        return flat
                ? allowed.get().kg()
                : Math.max(0, Math.min(allowed.get().kg(), vehicle.extraMassKg().orElseThrow()));
    }

    /**
     * What an axle, or a group that counts as one, may carry.
     *
     * @param spacingM of the axles in the group, the largest of a triaxle; 0 of a single one
     */
    public Legal axle(LocalDate day, AxleRule.Group group, boolean driven, double spacingM, Optional<Boolean> twinAir) {
        List<AxleRule> fitting = axles.stream()
                .filter(rule -> rule.force().orElseThrow().on(day) && rule.fits(group, driven, spacingM))
                .toList();
        Optional<AxleRule> best = fitting.stream()
                .filter(rule -> rule.twinAir().isEmpty() || rule.twinAir().equals(twinAir))
                .max(Comparator.comparingInt(AxleRule::kg));
        boolean asked = twinAir.isEmpty()
                && fitting.stream().anyMatch(rule -> rule.twinAir().isPresent());
        return best.map(rule -> new Legal(
                        Optional.of(rule.kg()),
                        List.of(new Cited(rule.id(), rule.source())),
                        asked ? List.of(Ask.TWIN_AIR) : List.of()))
                .orElseGet(Legal::none);
    }
}
