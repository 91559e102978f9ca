package wainbook.order.specification.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.act.Reason;
import wainbook.order.specification.DayEnergy;
import wainbook.page.Words;
import wainbook.page.chart.Stacks;

/**
 * Where the energy of a day goes, as its page shows it.
 *
 * @param day empty where it cannot be worked out, or there is no room for so many packs
 */
public record EnergyView(SpecificationView view, int packs, Optional<DayEnergy> day) {

    /** @param asked how many packs; below 1 those that are looked at first */
    static EnergyView of(SpecificationView view, int asked) {
        int packs = asked < 1 && !view.rows().isEmpty() ? view.shownPacks() : asked;
        return new EnergyView(
                view,
                packs,
                view.working()
                        .filter(working -> packs <= working.places())
                        .map(working -> DayEnergy.of(working, packs)));
    }

    public String path() {
        return view.path() + "/energy";
    }

    /** Why there is nothing to show. */
    public List<Reason> missing() {
        if (view.working().isEmpty()) {
            return view.missing();
        }
        int places = view.working().get().places();
        return day.isPresent()
                ? List.of()
                : List.of(Reason.of("order.packsNotThere", Reason.WORKS_RULE, packs, view.packType(), places)
                        .liftedAt("/process/components"));
    }

    public String state() {
        return Words.of(
                "order.energyState",
                packs,
                view.packType(),
                day.map(known -> RowView.one(known.usualKwh())).orElse("–"));
    }

    public String lead() {
        DayEnergy known = day.orElseThrow();
        return Words.of(
                "order.energyLead",
                RowView.one(known.usualKwh()),
                RowView.one(known.km()),
                EnergyLine.two(known.usualKwh() / known.km()),
                RowView.one(known.worstKwh()));
    }

    public List<EnergyLine> lines() {
        List<DayEnergy.Part> parts = day.orElseThrow().parts();
        return IntStream.range(0, parts.size())
                .mapToObj(i -> EnergyLine.of(
                        name(i),
                        parts.get(i).km(),
                        parts.get(i).hours(),
                        parts.get(i).spent()))
                .toList();
    }

    public EnergyLine driving() {
        DayEnergy known = day.orElseThrow();
        return EnergyLine.of(Words.of("order.energyDriving"), known.km(), known.hours(), known.driving());
    }

    /** From the driving to the usual day, and from there to the worst. */
    public List<Sum> sums() {
        DayEnergy known = day.orElseThrow();
        double driving = known.driving().totalKwh();
        double body = known.hydraulicsKwh() + known.bodyKwh();
        return List.of(
                new Sum(Words.of("order.energyDriving"), driving, known.worstDriving(), known.worstDriving() * driving),
                new Sum(
                        Words.of("order.energyHydraulics"),
                        known.hydraulicsKwh(),
                        known.worstBody(),
                        known.worstBody() * known.hydraulicsKwh()),
                new Sum(
                        Words.of("order.energyBody"),
                        known.bodyKwh(),
                        known.worstBody(),
                        known.worstBody() * known.bodyKwh()),
                new Sum(Words.of("order.energyHeating"), 0, 1, known.coldest().heatingKwh()),
                new Sum(
                        Words.of("order.energyConditioning"),
                        0,
                        1,
                        known.coldest().conditioningKwh()),
                new Sum(Words.of("order.energyDay"), driving + body, 1, known.worstKwh()));
    }

    /** One line of the way from the usual day to the worst. */
    public record Sum(String name, double usualKwh, double times, double worstKwh) {
        public String usual() {
            return RowView.one(usualKwh);
        }

        public String factor() {
            return times == 1 ? "" : "× " + EnergyLine.two(times);
        }

        public String worst() {
            return RowView.one(worstKwh);
        }
    }

    public Stacks chart() {
        DayEnergy known = day.orElseThrow();
        var stacks = new ArrayList<Stacks.Stack>();
        for (int i = 0; i < known.parts().size(); i++) {
            stacks.add(EnergyLine.stack(name(i), known.parts().get(i).spent(), 0, 0));
        }
        double body = known.hydraulicsKwh() + known.bodyKwh();
        stacks.add(EnergyLine.stack(Words.of("order.energyUsual"), known.driving(), body, 0));
        stacks.add(EnergyLine.stack(
                Words.of("order.energyWorst"),
                known.driving().times(known.worstDriving()),
                known.worstBody() * body,
                known.coldest().kwh()));
        return new Stacks(
                Words.of("order.energyChart"),
                Words.of("order.energyChartText"),
                Stream.of("rolling", "air", "climb", "braked", "losses", "consumers", "body", "heat")
                        .map(piece -> Words.of("order.energyPiece." + piece))
                        .toList(),
                stacks);
    }

    /** How each part was worked out. */
    public List<PartSteps> working() {
        DayEnergy known = day.orElseThrow();
        var steps = new EnergySteps(view.working().orElseThrow());
        return IntStream.range(0, known.parts().size())
                .mapToObj(i -> new PartSteps(name(i), steps.of(i, known.parts().get(i))))
                .toList();
    }

    /** A part with its steps. */
    public record PartSteps(String name, List<StepLine> steps) {
        public PartSteps {
            steps = List.copyOf(steps);
        }
    }

    List<List<String>> cells() {
        if (day.isEmpty()) {
            return List.of();
        }
        var rows = new ArrayList<List<String>>();
        lines().forEach(line -> rows.add(line.cells()));
        rows.add(driving().cells());
        sums().forEach(sum -> {
            rows.add(EnergyLine.total(Words.of("order.energyUsualOf", sum.name()), sum.usualKwh()));
            rows.add(EnergyLine.total(Words.of("order.energyWorstOf", sum.name()), sum.worstKwh()));
        });
        return rows;
    }

    private String name(int part) {
        return day.orElseThrow()
                .parts()
                .get(part)
                .way()
                .map(way -> (part + 1) + " " + Words.of("order.way." + way.name()))
                .orElseGet(() -> (part + 1) + " " + Words.of("order.recordedWay"));
    }
}
