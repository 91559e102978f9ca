package wainbook.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;

/** What the looks page shows: every part in each of its states, with invented facts. */
public record Looks(
        List<RouteBar> routes, List<Reason> reasons, Form form, List<Option> options, List<Crumb> crumbs, Leaf leaf) {

    private static final double TAKT_MIN = 94;

    static Looks invented() {
        return new Looks(
                List.of(behindPlan(), onHold(), allSigned()),
                refusal(),
                returned(),
                kinds(),
                above(),
                new Leaf(2, 25, 312, "/looks"));
    }

    public Instant at() {
        return Instant.parse("2026-11-24T09:14:27.123456Z");
    }

    public Form right() {
        return Form.EMPTY.with("readingOhm", "0.091");
    }

    public List<String> signs() {
        return List.of(Words.of("looks.signs").split(" "));
    }

    private static RouteBar behindPlan() {
        List<RouteBar.Cell> cells = new ArrayList<>();
        int[] minutes = {60, 94, 94, 120, 94, 80, 94, 94, 70, 94, 60, 45};
        for (int i = 0; i < minutes.length; i++) {
            String mark = String.valueOf(i + 1);
            String name = Words.of("looks.stage" + mark);
            cells.add(
                    i < 6
                            ? RouteBar.Cell.signed(mark, name, minutes[i])
                            : i == 6
                                    ? RouteBar.Cell.now(mark, name, minutes[i], 0.64)
                                    : RouteBar.Cell.blank(mark, name, minutes[i]));
        }
        cells.set(3, cells.get(3).carriesOver());
        return new RouteBar(cells, TAKT_MIN, Optional.of(680.0));
    }

    private static RouteBar onHold() {
        List<RouteBar.Cell> cells = new ArrayList<>(behindPlan().cells());
        cells.set(6, cells.get(6).onHold());
        return new RouteBar(cells, TAKT_MIN, Optional.of(602.16));
    }

    private static RouteBar allSigned() {
        List<RouteBar.Cell> cells = behindPlan().cells().stream()
                .map(cell -> RouteBar.Cell.signed(cell.mark(), cell.name(), cell.plannedMin()))
                .toList();
        return new RouteBar(cells, TAKT_MIN, Optional.empty());
    }

    private static List<Reason> refusal() {
        return List.of(
                Reason.of("looks.ownWork", "ISO 9001:2015 8.6", 3, Words.of("looks.inspectors"))
                        .liftedAt("/looks"),
                Reason.of("looks.itemsOpen", Reason.WORKS_RULE, 2).liftedAt("/looks"));
    }

    private static Form returned() {
        return Form.EMPTY
                .with("torqueNm", "27,4.1")
                .with("serial", "BJ-0O1lI")
                .with("kind", "curtain")
                .wrong("torqueNm", "looks.torqueFault", "27,4.1")
                .wrong("reason", "looks.reasonFault");
    }

    private static List<Option> kinds() {
        return List.of(
                new Option("hook", Words.of("looks.hook")),
                new Option("bus", Words.of("looks.bus")),
                new Option("curtain", Words.of("looks.curtain")));
    }

    private static List<Crumb> above() {
        return List.of(new Crumb("/", Words.of("page.name")), new Crumb("/looks", Words.of("looks.title")));
    }
}
