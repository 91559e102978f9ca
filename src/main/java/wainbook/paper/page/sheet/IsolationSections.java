package wainbook.paper.page.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.isolation.Step;
import wainbook.isolation.fact.Limits;
import wainbook.isolation.permit.Precaution;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.paper.page.sheet.Section.Column;
import wainbook.paper.page.sheet.Section.Kind;
import wainbook.paper.page.sheet.Section.Row;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Point;
import wainbook.process.plan.Point.Pair;

/**
 * The parts of an isolation form in the order of the work.
 *
 * @param plan of the vehicle; on a blank form what the plan names is written by hand
 * @param landed sources that the work has brought aboard
 */
public record IsolationSections(Optional<Plan> plan, List<String> landed) {

    public static final int LOCKS = 6;
    public static final int READERS = 4;
    private static final int SOURCES = 6;
    private static final int POINTS = 7;
    private static final int CHECKS = 5;

    public static final List<Precaution> PRECAUTIONS = Stream.of(
                    Step.PLAN, Step.SHUT_DOWN, Step.ISSUE_PERMIT, Step.RESTORE)
            .flatMap(step -> step.confirmed().stream())
            .distinct()
            .toList();

    private static final Column WHO = column("who", Kind.TEXT);
    private static final Column TIME = column("time", Kind.TIME);

    public static List<Option> ticks() {
        return PRECAUTIONS.stream()
                .map(one -> new Option(one.name(), Words.of("isolation.precaution." + one.name())))
                .toList();
    }

    public List<Section> all() {
        return List.of(
                section("begin", one(), WHO, TIME, column("down", Kind.TIME), text("box"), text("keys")),
                new Section("source", title("source"), waiting(), List.of(TIME), sources()),
                section("lock", numbered(LOCKS), WHO, text("lock"), text("tag"), time("on"), time("off")),
                section(
                        "tester",
                        List.of(row("before"), row("after")),
                        WHO,
                        TIME,
                        text("tester"),
                        text("known"),
                        number("sourceVolt"),
                        number("readingVolt")),
                touched("first"),
                touched("again"),
                section("witness", one(), WHO, TIME),
                section("permit", one(), WHO, TIME, text("receiver"), text("work"), text("points"), time("until")),
                section("reader", numbered(READERS), WHO, TIME),
                section("back", one(), WHO, TIME, text("opened")),
                section("cancelled", one(), WHO, TIME),
                section("check", checks(), WHO, TIME),
                section("restored", one(), WHO, TIME, text("lock")));
    }

    public List<Point> points() {
        return plan.map(known -> known.pointsWith(landed)).orElse(List.of());
    }

    /** Pairs that any of the points has: the three of the rails at least. */
    List<Pair> pairs() {
        return Stream.concat(Point.RAILS.stream(), points().stream().flatMap(point -> point.pairs().stream()))
                .distinct()
                .sorted()
                .toList();
    }

    private Section touched(String key) {
        var columns = new ArrayList<Column>();
        columns.add(TIME);
        pairs().forEach(pair ->
                columns.add(new Column(pair.name(), Words.of("isolating.pair." + pair.name()) + " / V", Kind.NUMBER)));
        List<Row> rows = plan.isEmpty()
                ? numbered(POINTS)
                : points().stream()
                        .map(point -> new Row(point.code(), point.code(), point.where()))
                        .toList();
        return new Section(key, title(key), note(key), columns, rows);
    }

    private List<Row> sources() {
        return plan.isEmpty()
                ? numbered(SOURCES)
                : plan.get().sourcesWith(landed).stream()
                        .map(source -> new Row(
                                source.code(),
                                source.code() + " " + source.name(),
                                Words.of("paper.sourceHow", source.howOpened(), source.lockedAt(), source.howShown())))
                        .toList();
    }

    private List<Row> checks() {
        return plan.isEmpty()
                ? numbered(CHECKS)
                : plan.get().restoration().stream()
                        .map(check -> new Row(
                                check.code(),
                                check.code(),
                                check.onlyIfOpened() ? Words.of("paper.onlyIfOpened", check.what()) : check.what()))
                        .toList();
    }

    private static Section section(String key, List<Row> rows, Column... columns) {
        return new Section(key, title(key), note(key), List.of(columns), rows);
    }

    private static String title(String key) {
        return Words.of("paper.part." + key);
    }

    /** What the part asks, with the works’ figures, which the machine judges by as well. */
    private static String note(String key) {
        Limits limits = Limits.usual();
        return Words.find("paper.note." + key).isEmpty()
                ? ""
                : Words.of(
                        "paper.note." + key,
                        limits.deadVolt().toPlainString(),
                        limits.dangerDcVolt().toPlainString(),
                        limits.dangerAcVolt().toPlainString(),
                        limits.riseVolt().toPlainString(),
                        limits.reprobeAfterSeconds(),
                        limits.testerPercent(),
                        limits.permitWithinMinutes());
    }

    private String waiting() {
        return plan.map(known -> Words.of("paper.note.source", known.waitMinutes()))
                .orElseGet(() -> Words.of("paper.noteSourceBlank"));
    }

    private static List<Row> one() {
        return List.of(new Row("1", "", ""));
    }

    private static Row row(String key) {
        return new Row(key, Words.of("paper.row." + key), "");
    }

    private static List<Row> numbered(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> new Row(String.valueOf(number), String.valueOf(number), ""))
                .toList();
    }

    private static Column text(String key) {
        return column(key, Kind.TEXT);
    }

    private static Column time(String key) {
        return column(key, Kind.TIME);
    }

    private static Column number(String key) {
        return column(key, Kind.NUMBER);
    }

    private static Column column(String key, Kind kind) {
        return new Column(key, Words.of("paper.column." + key), kind);
    }
}
