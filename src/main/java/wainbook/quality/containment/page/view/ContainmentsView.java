package wainbook.quality.containment.page.view;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.quality.QualitySaying.Sort;
import wainbook.quality.containment.ContainmentRow;
import wainbook.quality.containment.Containments.Unopened;
import wainbook.quality.containment.vehicle.VehicleDoubtRow;

/**
 * The list of containments.
 *
 * @param unopened entries that gave cause for one, and none was opened
 */
public record ContainmentsView(List<Line> lines, List<Unopened> unopened, Form form, boolean mayOpen) {

    /** One containment with what it came to so far. */
    public record Line(ContainmentRow row, List<VehicleDoubtRow> vehicles) {

        public static List<Line> all(String search, String sort) {
            Map<String, List<VehicleDoubtRow>> vehicles = VehicleDoubtRow.<VehicleDoubtRow>listAll().stream()
                    .collect(Collectors.groupingBy(row -> row.containment));
            return ContainmentRow.all().stream()
                    .filter(row -> sort.isEmpty() || row.sort.name().equals(sort))
                    .filter(row -> (row.code + " " + row.about + " " + row.reason)
                            .toLowerCase(Words.LOCALE)
                            .contains(search.toLowerCase(Words.LOCALE)))
                    .map(row -> new Line(row, vehicles.getOrDefault(row.code, List.of())))
                    .toList();
        }

        public int sureOut() {
            return sum(row -> row.sureOut);
        }

        public int possible() {
            return sum(row -> row.possible);
        }

        public int safe() {
            return sum(row -> row.safe);
        }

        public int open() {
            return sum(row -> row.openReadings);
        }

        public long held() {
            return vehicles.stream().filter(row -> row.held).count();
        }

        public boolean untold() {
            return vehicles.size() < row.vehicles;
        }

        private int sum(Function<VehicleDoubtRow, Integer> part) {
            return vehicles.stream().mapToInt(part::apply).sum();
        }

        public String sort() {
            return Words.of("quality.sort." + row.sort.name());
        }

        public String state() {
            if (row.closed) {
                return Words.of("quality.stateClosed");
            }
            return open() == 0
                    ? Words.of("quality.stateAllDecided")
                    : Words.of("quality.progress", sureOut() + possible() - open(), sureOut() + possible());
        }

        public String meaning() {
            return row.closed || open() == 0 ? "quiet" : sureOut() > 0 ? "danger" : "warn";
        }

        public String sign() {
            return row.closed ? "done" : open() == 0 ? "clock" : "alert";
        }

        public List<String> cells() {
            return List.of(
                    row.code,
                    row.sort.name(),
                    row.about,
                    row.reason,
                    row.openedAt.toString(),
                    state(),
                    String.valueOf(vehicles.size()),
                    String.valueOf(held()),
                    String.valueOf(sureOut()),
                    String.valueOf(possible()),
                    String.valueOf(safe()),
                    String.valueOf(open()));
        }
    }

    public List<Option> sorts() {
        return Arrays.stream(Sort.values())
                .map(sort -> new Option(sort.name(), Words.of("quality.sort." + sort.name())))
                .toList();
    }

    public String csv() {
        return "/quality/containments.csv";
    }

    public boolean filtered() {
        return !form.value("search").isEmpty() || !form.value("sort").isEmpty();
    }
}
