package wainbook.order.specification.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.engineering.energy.driving.Vehicle;
import wainbook.engineering.specification.DutyDay;
import wainbook.engineering.specification.DutyPart;
import wainbook.engineering.specification.Night;
import wainbook.engineering.specification.PackTable;
import wainbook.engineering.specification.SpecificationTable;
import wainbook.engineering.weights.TwoAxles;
import wainbook.order.duty.Duty;
import wainbook.page.Words;

/** How a row was worked out, step by step, each with its formula, its source and the calculation that does the same. */
final class Steps {

    private static final String MOTION = "order.source.motion";

    private final SpecificationTable table;
    private final Duty duty;

    Steps(SpecificationTable table, Duty duty) {
        this.table = table;
        this.duty = duty;
    }

    List<StepLine> of(SpecificationTable.Row row) {
        PackTable packs = table.packs();
        DutyDay day = packs.day();
        TwoAxles empty = row.packs().empty();
        var steps = new ArrayList<StepLine>();
        for (int i = 0; i < day.parts().size(); i++) {
            steps.add(part(day, i, empty.totalKg(), row.packs().packs()));
        }
        steps.add(step(
                "usual",
                "Σ + W",
                text(row.packs().drivingKwh()) + " + " + text(day.hydraulicKwh()),
                text(row.packs().usualKwh()),
                "kWh",
                "order.source.hydraulics",
                Optional.empty()));
        steps.add(step(
                "worst",
                "Σ · a + W · b + Q + C",
                text(row.packs().drivingKwh()) + " · " + text(day.worstDriving()) + " + " + text(day.hydraulicKwh())
                        + " · " + text(day.worstHydraulic()) + " + "
                        + text(day.coldest().heatingKwh()) + " + "
                        + text(day.coldest().conditioningKwh()),
                text(row.packs().worstKwh()),
                "kWh",
                "order.source.heating",
                Optional.empty()));
        double coldShare = day.coldest().packShare();
        double usable = coldShare * packs.pack().usableAtEndKwh(row.packs().packs());
        steps.add(step(
                "cold",
                duty.packsInTheCold().isEmpty() ? "1" : "c = 1 − 0.005 · max(0, 20 − T)",
                coldFigures(),
                text(coldShare),
                "",
                "order.source.cold",
                Optional.empty()));
        steps.add(step(
                "usable",
                "n · E · window · end of life · c",
                row.packs().packs() + " · " + text(packs.pack().nominalKwh()) + " · "
                        + text(packs.pack().window()) + " · "
                        + text(packs.pack().endOfLife()) + " · " + text(coldShare),
                text(usable),
                "kWh",
                "order.source.window",
                Optional.empty()));
        steps.add(step(
                "odds",
                "Φ(ln(usable / worst) / σ)",
                "σ = " + text(packs.need().sigma()),
                RowView.percent(row.packs().oddsAtEnd()),
                "",
                "order.source.odds",
                Optional.of(link(
                        "packs",
                        "needKwh",
                        row.packs().worstKwh(),
                        "marginShare",
                        0.0,
                        "packKwh",
                        packs.pack().nominalKwh(),
                        "window",
                        coldShare * packs.pack().window(),
                        "stateOfHealth",
                        packs.pack().endOfLife(),
                        "sigma",
                        packs.need().sigma()))));
        steps.add(step(
                "payload",
                "min(T, F, R, steered)",
                "F = " + text(empty.frontKg()) + ", R = " + text(empty.rearKg()) + ", L = " + text(empty.wheelbaseM()),
                text(row.packs().payload().kg()),
                "kg",
                "order.source.moments",
                Optional.of(loads(empty))));
        steps.add(step(
                "start",
                "sin θ + f · cos θ = (F − m · λ · a₀) / (m · g)",
                "F = " + text(table.drive().greatestForceN()) + " N, m = "
                        + text(row.packs().laden().totalKg()) + " kg, a₀ = " + SpecificationTable.START_MPS2,
                row.start().grade().isPresent()
                        ? text(100 * row.start().grade().getAsDouble())
                        : Words.of("order.anySlope"),
                "%",
                "order.source.slope",
                Optional.of(link(
                        "gradeability",
                        "forceN",
                        table.drive().greatestForceN(),
                        "massKg",
                        row.packs().laden().totalKg(),
                        "rotatingFactor",
                        day.vehicle().rotatingFactor(),
                        "rolling",
                        day.vehicle().rolling(),
                        "startAcceleration",
                        SpecificationTable.START_MPS2))));
        steps.add(step(
                "charge",
                "E · (s − s₀) / P + E / (P · k) · ln(…)",
                text(row.packs().packs() * packs.pack().nominalKwh()) + " kWh, "
                        + text(table.night().powerKw()) + " kW · " + Night.EFFICIENCY,
                text(row.chargeHours()),
                "h",
                "order.source.charge",
                Optional.of(link(
                        "charging-time",
                        "packKwh",
                        row.packs().packs() * packs.pack().nominalKwh(),
                        "powerKw",
                        table.night().powerKw(),
                        "efficiency",
                        Night.EFFICIENCY,
                        "fromSoc",
                        Night.FROM,
                        "toSoc",
                        Night.TO,
                        "taperSoc",
                        Night.TAPER,
                        "endShare",
                        Night.END_SHARE))));
        return steps;
    }

    private String coldFigures() {
        String outside = "T = " + duty.heating().outsideC().toPlainString().replace('-', '−') + " °C";
        return duty.packsInTheCold()
                .map(packs -> switch (packs) {
                    case WARMED -> Words.of("order.stepWarmed");
                    case AS_THE_AIR -> outside;
                })
                .orElseGet(() -> Words.of("order.stepColdNotAsked"));
    }

    private StepLine part(DutyDay day, int index, double emptyKg, int packs) {
        DutyPart part = day.parts().get(index);
        double massKg = emptyKg + part.loadShare() * table.packs().payloadKg();
        Vehicle weighed = day.vehicle().weighing(massKg);
        String name = index < duty.legs().size()
                ? Words.of("order.way." + duty.legs().get(index).way().name())
                : Words.of("order.recordedWay");
        return new StepLine(
                name,
                "(E_roll + E_air + E_brake + m g Δh) / η − E_brake · r · η · 0.96 + P · t",
                text(part.km()) + " km, " + text(massKg) + " kg",
                text(part.spent(weighed, packs).totalKwh()),
                "kWh",
                Words.of(MOTION),
                Optional.empty());
    }

    private String loads(TwoAxles empty) {
        PackTable packs = table.packs();
        return link(
                        "axle-loads",
                        "wheelbaseM",
                        empty.wheelbaseM(),
                        "emptyFrontKg",
                        empty.frontKg(),
                        "emptyRearKg",
                        empty.rearKg(),
                        "frontLimitKg",
                        packs.limits().frontKg(),
                        "rearLimitKg",
                        packs.limits().rearKg(),
                        "grossLimitKg",
                        packs.limits().grossKg(),
                        "steeringShareMin",
                        packs.limits().steeringShareMin())
                + "&items="
                + URLEncoder.encode(
                        "payload;" + plain(packs.payloadKg()) + ";" + plain(packs.payloadCentreM()),
                        StandardCharsets.UTF_8);
    }

    private static StepLine step(
            String key,
            String formula,
            String figures,
            String value,
            String unit,
            String source,
            Optional<String> link) {
        return new StepLine(Words.of("order.step." + key), formula, figures, value, unit, Words.of(source), link);
    }

    /** @param pairs names and figures in turn */
    private static String link(String calculation, Object... pairs) {
        var fields = new ArrayList<String>();
        for (int i = 0; i < pairs.length; i += 2) {
            fields.add(pairs[i] + "=" + plain((Double) pairs[i + 1]));
        }
        return "/calculations/" + calculation + "?" + fields.stream().collect(Collectors.joining("&"));
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.6f", value).replaceAll("\\.?0+$", "");
    }

    private static String text(double value) {
        return String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.3f" : "%.1f", value)
                .replace('-', '−');
    }
}
