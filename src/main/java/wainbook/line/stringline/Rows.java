package wainbook.line.stringline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Stages from top to bottom, each with a lane for every station; the last row is for what is off the line.
 *
 * @param off its name
 */
public record Rows(List<Named> stages, String off, int top, int height) {

    private static final int LONGEST_NAME = 30;

    /** @param stations side by side */
    public record Named(String stage, String title, List<String> stations) {
        public Named {
            stations = List.copyOf(stations);
        }
    }

    /** A row as it is drawn. */
    public record Row(String title, int y, int middle) {}

    public Rows {
        stages = List.copyOf(stages);
    }

    public List<Row> drawn() {
        var rows = new ArrayList<Row>();
        IntStream.range(0, stages.size())
                .forEach(i -> rows.add(row(stages.get(i).title(), i)));
        rows.add(row(off, stages.size()));
        return rows;
    }

    int foot() {
        return top + (stages.size() + 1) * height;
    }

    /** Where a vehicle at this place of this stage is drawn; empty for a stage that is not on the picture. */
    Optional<Double> at(Optional<String> stage, String place) {
        if (stage.isEmpty()) {
            return Optional.of(lane(stages.size(), 0, 1));
        }
        return index(stage.get()).map(row -> {
            List<String> stations = stages.get(row).stations();
            return lane(row, Math.max(0, stations.indexOf(place)), stations.size());
        });
    }

    /** Where a vehicle that will be at this stage is drawn: nobody knows yet at which of its stations. */
    Optional<Double> ahead(String stage, int number) {
        return index(stage).map(row -> {
            int stations = Math.max(1, stages.get(row).stations().size());
            return lane(row, number % stations, stations);
        });
    }

    private Optional<Integer> index(String stage) {
        return IntStream.range(0, stages.size())
                .filter(i -> stages.get(i).stage().equals(stage))
                .boxed()
                .findFirst();
    }

    private double lane(int row, int lane, int lanes) {
        return top + row * height + height * (lane + 1.0) / (Math.max(1, lanes) + 1);
    }

    private Row row(String title, int i) {
        return new Row(shortened(title), top + i * height, top + i * height + height / 2);
    }

    private static String shortened(String name) {
        return name.length() <= LONGEST_NAME
                ? name
                : name.substring(0, LONGEST_NAME - 1).strip() + "…";
    }
}
