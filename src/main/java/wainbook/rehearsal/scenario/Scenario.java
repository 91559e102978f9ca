package wainbook.rehearsal.scenario;

import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.order.calibration.SameTime;
import wainbook.order.calibration.Wish;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.Duty;

/**
 * What a rehearsal plays: {@code rehearsal.yaml} beside the files of the works.
 *
 * @param typical what is usually drained, taken out or counted, by sheet and item: the sheets leave it open
 * @param certificates old ones of torque tools, from before the works kept its book here
 */
public record Scenario(long seed, List<Kind> kinds, Map<String, BigDecimal> typical, Certificates.Drawn certificates) {

    /**
     * One kind of vehicle.
     *
     * @param share how many of all vehicles, beside the shares of the others
     * @param vinPrefix what the invented identification numbers begin with
     * @param registration the form of the registration marks
     * @param odometerKm the least and the most
     * @param facts what is known of every vehicle of this kind
     */
    public record Kind(
            String kind,
            String route,
            String variant,
            int share,
            List<String> operators,
            String vinPrefix,
            String registration,
            List<Integer> odometerKm,
            Map<String, String> facts,
            Optional<Asked> specification) {}

    /** What the operator asks for, the vehicle it is worked for, and what is chosen. The survey weighs the donor anew. */
    public record Asked(
            Duty duty,
            ChassisFigures vehicle,
            int packs,
            String packType,
            List<Promised> promises,
            Optional<Driving> calibration) {}

    /** How the vehicle shall drive. */
    public record Driving(List<Wish> wishes, Optional<SameTime> sameTime) {}

    /** What the operator is promised. */
    public record Promised(String option, List<String> items, List<String> documents, boolean beforeHandover) {}

    public Scenario {
        kinds = List.copyOf(kinds);
        typical = typical == null ? Map.of() : Map.copyOf(typical);
        certificates = certificates == null ? Certificates.Drawn.none() : certificates;
    }

    /** Empty where the works has nothing to rehearse. */
    public static Optional<Scenario> beside(String folder) {
        String file = folder + "/rehearsal.yaml";
        try (InputStream text = Thread.currentThread().getContextClassLoader().getResourceAsStream(file)) {
            return text == null
                    ? Optional.empty()
                    : Optional.of(YAMLMapper.builder()
                            .addModule(new Jdk8Module())
                            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
                            .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
                            .build()
                            .readValue(text, Scenario.class));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(file, unreadable);
        }
    }

    /** What is usual of an item: of this kind of vehicle, or of all. */
    public Optional<BigDecimal> typical(Kind kind, String item) {
        return Optional.ofNullable(typical.get(kind.kind() + "/" + item))
                .or(() -> Optional.ofNullable(typical.get(item)));
    }

    public Scenario seeded(long other) {
        return new Scenario(other, kinds, typical, certificates);
    }

    /** The kind of the vehicle with this number: kinds come mixed, as orders do, and each to its share. */
    public Kind kindOf(int vehicle) {
        var round = new ArrayList<Kind>();
        int most = kinds.stream().mapToInt(Kind::share).max().orElse(0);
        for (int turn = 0; turn < most; turn++) {
            for (Kind kind : kinds) {
                if (turn < kind.share()) {
                    round.add(kind);
                }
            }
        }
        return round.get(Math.floorMod(vehicle, round.size()));
    }
}
