package wainbook.station.outline;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wainbook.process.Route;
import wainbook.process.VehicleFacts;
import wainbook.process.outline.Outline;
import wainbook.process.outline.Shape;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.setup.files.WorksFiles;
import wainbook.setup.files.WorksFolder;
import wainbook.station.outline.Marked.Standing;

/** On the narrowest page every place can be hit, and no mark lies on another. */
class PlacesOnTheVehicleTest {

    private static final List<WorksFiles> WORKS = List.of(read("demo-fleet"), read("src/test/resources/small-works"));

    private static WorksFiles read(String folder) {
        return WorksFolder.read(Path.of(folder), VehicleFacts.PREDICATES).fold(files -> files, faults -> {
            throw new AssertionError(faults);
        });
    }

    static List<Outline> outlines() {
        return WORKS.stream().flatMap(files -> files.outlines().stream()).toList();
    }

    @Test
    void every_kind_of_the_demonstration_is_drawn_from_three_sides() {
        assertThat(WORKS.get(0).outlines())
                .extracting(Outline::vehicleKind)
                .containsExactlyInAnyOrder("bus-12m", "curtainside-18t", "hookloader-26t", "reefer-7t5");
        assertThat(WORKS.get(0).outlines()).allMatch(outline -> outline.views().size() == 3);
    }

    @Test
    void every_zone_that_work_on_a_kind_names_has_its_place() {
        for (WorksFiles files : WORKS) {
            for (Route route : files.routes()) {
                Outline outline = files.outlines().stream()
                        .filter(drawn -> drawn.vehicleKind().equals(route.vehicleKind()))
                        .findFirst()
                        .orElseThrow();
                assertThat(zones(route, files))
                        .isNotEmpty()
                        .allMatch(zone -> outline.zone(zone).isPresent());
            }
        }
    }

    private static Set<String> zones(Route route, WorksFiles files) {
        Set<String> sheets = new HashSet<>(Set.of(route.intakeSheet()));
        route.legs().forEach(leg -> sheets.add(leg.checkSheet()));
        Set<String> zones = new HashSet<>();
        files.sheets().stream()
                .filter(sheet -> sheets.contains(sheet.code()))
                .map(CheckSheet::items)
                .flatMap(List::stream)
                .map(CheckItem::zone)
                .forEach(zone -> zone.ifPresent(zones::add));
        return zones;
    }

    @ParameterizedTest
    @MethodSource("outlines")
    void every_zone_is_as_large_as_a_gloved_finger(Outline outline) {
        double scale = (double) Drawing.WIDTH / outline.widestMm();
        assertThat(outline.zones())
                .allSatisfy(zone -> assertThat(Math.min(zone.width(), zone.height()) * scale)
                        .as(zone.name())
                        .isGreaterThanOrEqualTo(Drawing.TOUCH));
    }

    @ParameterizedTest
    @MethodSource("outlines")
    void marks_of_a_view_stay_in_their_zones_and_apart_however_many_items_there_are(Outline outline) {
        for (int each : List.of(1, 2, 3, 5, 9, 14)) {
            Drawing drawing = Drawing.of(outline, everywhere(outline, each), Optional.empty());
            assertThat(drawing.others()).isEmpty();
            for (Drawing.View view : drawing.views()) {
                List<Mark> marks = new ArrayList<>();
                for (Drawing.Zone zone : view.zones()) {
                    assertThat(zone.marks()).as(zone.name()).isNotEmpty().allMatch(mark -> inside(mark, zone));
                    marks.addAll(zone.marks());
                }
                assertThat(overlapping(marks)).as(view.code() + " " + each).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("outlines")
    void strokes_are_paths_of_figures_alone(Outline outline) {
        assertThat(outline.views())
                .flatMap(Outline.View::shapes)
                .extracting(Shape::path)
                .allMatch(path -> path.matches("M[-MLahvz0-9 ]+"));
    }

    @Test
    void a_failed_item_says_so_and_many_open_ones_are_counted() {
        Outline bus = WORKS.get(0).outlines().stream()
                .filter(outline -> outline.vehicleKind().equals("bus-12m"))
                .findFirst()
                .orElseThrow();
        List<Marked> items = new ArrayList<>();
        IntStream.rangeClosed(1, 8).forEach(number -> items.add(item(number, "charging inlet", Standing.OPEN)));
        items.add(item(9, "charging inlet", Standing.FAILED));
        items.add(item(10, "saloon", Standing.DONE));
        items.add(item(11, "nowhere", Standing.OPEN));
        Drawing drawing = Drawing.of(bus, items, Optional.of("saloon"));
        Drawing.Zone inlet = drawing.zones().get(0);
        assertThat(inlet.told()).isEqualTo("9 of 9 open, 1 failed");
        assertThat(inlet.marks())
                .filteredOn(Mark::failed)
                .hasSize(1)
                .allSatisfy(mark -> assertThat(mark.word()).contains("failed"));
        assertThat(drawing.taken()).map(Drawing.Zone::told).contains("1 done");
        assertThat(drawing.zones().get(2).title()).isEqualTo("Not on the drawing");
        assertThat(drawing.zones().get(2).placed()).isFalse();
        assertThat(drawing.others()).extracting(Drawing.View::code).containsExactly("ABOVE", "UNDERNEATH");
    }

    private static List<Marked> everywhere(Outline outline, int each) {
        List<Marked> items = new ArrayList<>();
        for (Outline.Zone zone : outline.zones()) {
            for (int item = 0; item < each; item++) {
                Standing standing =
                        List.of(Standing.FAILED, Standing.OPEN, Standing.DONE).get((items.size() + item) % 3);
                items.add(item(items.size() + 1, zone.name(), standing));
            }
        }
        return items;
    }

    private static Marked item(int number, String zone, Standing standing) {
        return new Marked(number, "item-" + number, "Item", Optional.of(zone), standing, number == 2);
    }

    private static boolean inside(Mark mark, Drawing.Zone zone) {
        return mark.x() >= zone.x() - 0.01
                && mark.y() >= zone.y() - 0.01
                && mark.x() + mark.width() <= zone.x() + zone.width() + 0.01
                && mark.y() + Mark.HEIGHT <= zone.y() + zone.height() + 0.01;
    }

    private static List<String> overlapping(List<Mark> marks) {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            for (int j = i + 1; j < marks.size(); j++) {
                Mark one = marks.get(i);
                Mark other = marks.get(j);
                if (one.x() < other.x() + other.width()
                        && other.x() < one.x() + one.width()
                        && one.y() < other.y() + Mark.HEIGHT
                        && other.y() < one.y() + Mark.HEIGHT) {
                    found.add(one + " and " + other);
                }
            }
        }
        return found;
    }
}
