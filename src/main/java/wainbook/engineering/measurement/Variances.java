package wainbook.engineering.measurement;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.FDistribution;

/** Mean squares of a table of parts and people with several trials in each cell. */
record Variances(
        double part, double person, double interaction, double error, double interactionFreedom, double errorFreedom) {

    static Variances of(List<List<List<Double>>> table) {
        int parts = table.size();
        int people = table.get(0).size();
        int trials = table.get(0).get(0).size();
        double mean = mean(table.stream().flatMap(List::stream).flatMap(List::stream));
        double[] ofPart = table.stream()
                .mapToDouble(part -> mean(part.stream().flatMap(List::stream)))
                .toArray();
        double[] ofPerson = IntStream.range(0, people)
                .mapToDouble(person -> mean(table.stream().flatMap(part -> part.get(person).stream())))
                .toArray();
        double crossed = 0;
        double errors = 0;
        for (int part = 0; part < parts; part++) {
            for (int person = 0; person < people; person++) {
                List<Double> cell = table.get(part).get(person);
                double ofCell = mean(cell.stream());
                crossed += square(ofCell - ofPart[part] - ofPerson[person] + mean);
                errors += cell.stream()
                        .mapToDouble(value -> square(value - ofCell))
                        .sum();
            }
        }
        double byPart = DoubleStream.of(ofPart).map(one -> square(one - mean)).sum();
        double byPerson =
                DoubleStream.of(ofPerson).map(one -> square(one - mean)).sum();
        double interactionFreedom = (parts - 1.0) * (people - 1.0);
        double errorFreedom = (double) parts * people * (trials - 1);
        return new Variances(
                (double) people * trials * byPart / (parts - 1),
                (double) parts * trials * byPerson / (people - 1),
                trials * crossed / interactionFreedom,
                errors / errorFreedom,
                interactionFreedom,
                errorFreedom);
    }

    /** Of so strong an interaction by chance alone; measurements without any spread leave none to chance. */
    double pInteraction() {
        return error == 0
                ? 0
                : FDistribution.of(interactionFreedom, errorFreedom).survivalProbability(interaction / error);
    }

    double pooled() {
        return (interaction * interactionFreedom + error * errorFreedom) / (interactionFreedom + errorFreedom);
    }

    private static double mean(Stream<Double> values) {
        return values.mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    private static double square(double value) {
        return value * value;
    }
}
