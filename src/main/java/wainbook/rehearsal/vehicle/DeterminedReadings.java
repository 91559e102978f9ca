package wainbook.rehearsal.vehicle;

import java.math.BigDecimal;
import java.math.RoundingMode;
import wainbook.process.determination.Given;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Limits;
import wainbook.rehearsal.chance.Dice;
import wainbook.station.Reply;

/** Readings of a sound vehicle, made from the quantity that lies behind them as a meter would see it. */
record DeterminedReadings(Dice dice, Ask.Determine ask) {

    private static final double METER_OHM = 10e6;
    /** How far a sound vehicle's insulation lies above what the works asks. */
    private static final double LEAST_TIMES = 1.6;

    private static final double MOST_TIMES = 4;

    void into(Reply.Builder reply) {
        switch (ask.method()) {
            case ISOLATION_VOLTMETER -> voltmeter(reply);
            case ISOLATION_DIRECT -> {
                double mega = works().lower().orElse(BigDecimal.valueOf(1e6)).doubleValue() / 1e6;
                read(reply, "measured", mega * LEAST_TIMES, mega * MOST_TIMES, 2);
                reply.reading("prefix", "MΩ")
                        .reading("shown", "value")
                        .reading("testV", given("workingV") <= 500 ? "500" : "1000");
            }
            case BONDING -> {
                double mostMV = works().upper().orElse(new BigDecimal("0.05")).doubleValue() * 1e3;
                reply.reading("currentA", "1.00");
                read(reply, "voltageMV", mostMV * 0.2, mostMV * 0.8, 2);
            }
            case PRECHARGE -> {
                double volt = dice.between(0.9, 0.98) * given("workingV");
                double timeS = -given("resistanceOhm") * given("capacitanceF") * Math.log(1 - given("ratio"));
                read(reply, "supplyV", volt, volt, 1);
                read(reply, "measuredS", timeS * 0.92, timeS * 1.08, 3);
            }
            case DISCHARGE -> {
                double volt = dice.between(0.9, 0.98) * given("workingV");
                double timeS = given("resistanceOhm") * given("capacitanceF") * Math.log(volt / given("limitV"));
                read(reply, "startV", volt, volt, 1);
                read(reply, "measuredS", timeS * 0.92, timeS * 1.08, 3);
            }
            case MONITOR_TEST -> {
                reply.reading("alarmNegative", "alarm").reading("alarmPositive", "alarm");
                read(reply, "alarmNegativeS", 2.5, 7.5, 1);
                read(reply, "alarmPositiveS", 2.5, 7.5, 1);
                reply.reading("clearNegative", "silent").reading("clearPositive", "silent");
            }
            case ISOLATION_COMBINED -> parts(reply, 20, 60, 1);
            case Y_CAPACITORS -> parts(reply, 20, 60, 0);
            case PACK_VOLTAGES -> packs(reply);
        }
        reply.sure();
    }

    /** Two leaks, a bus, and a meter that loads what it measures. */
    private void voltmeter(Reply.Builder reply) {
        double least = works().lower().orElse(BigDecimal.valueOf(1e6)).doubleValue();
        double busV = dice.between(given("nominalV") * 1.01, given("workingV") * 0.985);
        double negativeS = 1 / dice.between(least * LEAST_TIMES, least * MOST_TIMES);
        double positiveS = 1 / dice.between(least * LEAST_TIMES, least * MOST_TIMES);
        double meterS = 1 / METER_OHM;
        double negativeV = busV * positiveS / (negativeS + positiveS + meterS);
        double positiveV = busV * negativeS / (negativeS + positiveS + meterS);
        double withV = Math.max(negativeV, positiveV)
                * (negativeS + positiveS + meterS)
                / (negativeS + positiveS + meterS + 1 / given("insertedOhm"));
        reply.reading("busV", volts(busV))
                .reading("negativeToChassisV", volts(negativeV))
                .reading("positiveToChassisV", volts(positiveV))
                .reading("meterMOhm", "10")
                .reading("withResistorV", volts(withV));
    }

    private void parts(Reply.Builder reply, double from, double to, int decimals) {
        for (int part = 1; part <= ask.parts().size(); part++) {
            read(reply, "part" + part, from, to, decimals);
        }
    }

    /** Packs that were charged alike, each of which knows its own voltage. */
    private void packs(Reply.Builder reply) {
        double volt = dice.between(0.86, 0.9) * given("workingV");
        for (int pack = 1; pack <= ask.parts().size(); pack++) {
            double own = volt + dice.between(-0.3, 0.3) * given("windowV");
            read(reply, "part" + pack, own, own, 1);
            read(reply, "reported" + pack, own * 0.997, own * 1.003, 0);
        }
    }

    private void read(Reply.Builder reply, String name, double from, double to, int decimals) {
        reply.reading(name, dice.figure(from, to, decimals).toPlainString());
    }

    private static String volts(double volt) {
        return BigDecimal.valueOf(volt).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    private Limits works() {
        return ask.works().orElse(Limits.atLeast(BigDecimal.valueOf(1e6)));
    }

    private double given(String name) {
        return ask.given().stream()
                .filter(known -> known.name().equals(name))
                .findFirst()
                .flatMap(Given::value)
                .orElse(BigDecimal.ZERO)
                .doubleValue();
    }
}
