package wainbook.page;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A vehicle's whole way as a strip of cells, one a stage, as wide as the work planned for it. Positions are in per cent of
 * the strip, so that the drawing needs no script and no style to fit any width.
 *
 * @param cells the stages of this vehicle's route, in order
 * @param taktMin minutes of work in one takt
 * @param plannedMin planned work that should be done by now, in minutes; absent if there is no plan
 */
public record RouteBar(List<Cell> cells, double taktMin, Optional<Double> plannedMin) {

    /** Whether work at a stage is to come, in hand, or signed. */
    public enum State {
        BLANK,
        NOW,
        SIGNED
    }

    /**
     * One stage of the route.
     *
     * @param mark what stands in the cell, such as the stage's number
     * @param name the stage's name
     * @param plannedMin planned work in minutes, above 0
     * @param share elapsed over planned, 0 or more; above 1 the cell is full
     * @param held nothing may go on here until released
     * @param carried carried-over work leaves here for a later stage
     */
    public record Cell(
            String mark, String name, double plannedMin, State state, double share, boolean held, boolean carried) {
        public Cell {
            if (!(plannedMin > 0) || !(share >= 0)) {
                throw new IllegalArgumentException("a stage plans work, and its share is not negative: " + name);
            }
        }

        public static Cell blank(String mark, String name, double plannedMin) {
            return new Cell(mark, name, plannedMin, State.BLANK, 0, false, false);
        }

        public static Cell signed(String mark, String name, double plannedMin) {
            return new Cell(mark, name, plannedMin, State.SIGNED, 1, false, false);
        }

        public static Cell now(String mark, String name, double plannedMin, double share) {
            return new Cell(mark, name, plannedMin, State.NOW, share, false, false);
        }

        public Cell onHold() {
            return new Cell(mark, name, plannedMin, state, share, true, carried);
        }

        public Cell carriesOver() {
            return new Cell(mark, name, plannedMin, state, share, held, true);
        }

        double doneMin() {
            return plannedMin * (state == State.SIGNED ? 1 : state == State.NOW ? Math.min(share, 1) : 0);
        }
    }

    /** A cell where it is drawn: {@code x} and {@code width} in per cent of the strip, {@code share} of the cell. */
    public record Drawn(Cell cell, String x, String width, String share) {}

    /** A line of the scale; its number stays inside the strip. */
    public record Tick(String x, int takt, boolean named, String anchor) {}

    public RouteBar {
        cells = List.copyOf(cells);
        if (cells.isEmpty() || !(taktMin > 0)) {
            throw new IllegalArgumentException("a route has stages, and a takt has minutes");
        }
        if (cells.stream().filter(cell -> cell.state() == State.NOW).count() > 1) {
            throw new IllegalArgumentException("a vehicle is at one stage at a time");
        }
    }

    public double totalMin() {
        return cells.stream().mapToDouble(Cell::plannedMin).sum();
    }

    /** Planned minutes of the work that is done: all signed stages, and the elapsed part of the present one. */
    public double doneMin() {
        return cells.stream().mapToDouble(Cell::doneMin).sum();
    }

    public List<Drawn> drawn() {
        List<Drawn> drawn = new ArrayList<>();
        double before = 0;
        for (Cell cell : cells) {
            double width = cell.plannedMin();
            String share = percent(cell.doneMin() / width * totalMin());
            drawn.add(new Drawn(cell, percent(before), percent(width), share));
            before += width;
        }
        return drawn;
    }

    public List<Tick> ticks() {
        int last = (int) Math.floor(totalMin() / taktMin + 1e-9);
        int step = last <= 12 ? 1 : 5;
        List<Tick> ticks = new ArrayList<>();
        for (int takt = 0; takt <= last; takt++) {
            boolean atEnd = takt * taktMin > totalMin() * 0.99;
            String anchor = takt == 0 ? "start" : atEnd ? "end" : "middle";
            ticks.add(new Tick(percent(takt * taktMin), takt, takt % step == 0, anchor));
        }
        return ticks;
    }

    /** Where the plan says the vehicle should be by now. */
    public Optional<String> planned() {
        return plannedMin.map(minutes -> percent(Math.max(0, Math.min(minutes, totalMin()))));
    }

    /** The stretch between plan and present, drawn from its left end. */
    public Optional<String> gapStart() {
        return plannedMin.map(minutes -> percent(Math.max(0, Math.min(minutes, doneMin()))));
    }

    public Optional<String> gapWidth() {
        return plannedMin.map(minutes -> percent(Math.abs(Math.min(minutes, totalMin()) - doneMin())));
    }

    public boolean late() {
        return lateMin() >= 1;
    }

    /** Minutes of planned work behind the plan; negative if ahead of it. */
    public double lateMin() {
        return plannedMin.map(minutes -> minutes - doneMin()).orElse(0.0);
    }

    public String lateness() {
        long minutes = Math.round(lateMin());
        if (plannedMin.isEmpty()) {
            return Words.of("page.noPlan");
        }
        String key = minutes == 0 ? "page.onPlan" : minutes > 0 ? "page.behindPlan" : "page.aheadOfPlan";
        return Words.of(key, Formats.duration(Duration.ofMinutes(minutes)));
    }

    /** Where the vehicle stands, in one sentence. */
    public String where() {
        for (Cell cell : cells) {
            if (cell.state() == State.NOW) {
                String key = cell.held() ? "page.atStageHeld" : "page.atStage";
                return Words.of(key, cell.mark(), cell.name(), Math.round(cell.share() * 100));
            }
        }
        boolean finished = cells.stream().allMatch(cell -> cell.state() == State.SIGNED);
        return Words.of(finished ? "page.allSigned" : "page.betweenStages");
    }

    /** The same facts as the drawing, in words. */
    public String alternative() {
        List<String> said = new ArrayList<>();
        for (Cell cell : cells) {
            said.add(said(cell));
        }
        said.add(lateness());
        return String.join("; ", said);
    }

    private static String said(Cell cell) {
        String text = switch (cell.state()) {
            case BLANK -> Words.of("page.cellBlank", cell.mark(), cell.name());
            case SIGNED -> Words.of("page.cellSigned", cell.mark(), cell.name());
            case NOW -> Words.of("page.cellNow", cell.mark(), cell.name(), Math.round(cell.share() * 100));
        };
        text += cell.held() ? ", " + Words.of("page.cellHeld") : "";
        return text + (cell.carried() ? ", " + Words.of("page.cellCarried") : "");
    }

    private String percent(double minutes) {
        return String.format(Locale.ROOT, "%.3f%%", 100 * minutes / totalMin());
    }
}
