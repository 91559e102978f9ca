package wainbook.rehearsal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import wainbook.act.Actor;
import wainbook.rehearsal.chance.Dice;
import wainbook.waste.ContainerRow;
import wainbook.waste.act.Collecting;
import wainbook.waste.act.Returning;
import wainbook.works.Role;

/** Full containers leave with a note, and the site reports what became of them. */
final class WasteLeaving {

    private final WasteYard yard;

    WasteLeaving(WasteYard yard) {
        this.yard = yard;
    }

    /** What is sealed leaves so long before the present; a weighbridge weighs the coolant. */
    void collected(Duration before, boolean everything) {
        yard.playing.together(() -> {
            Dice dice = yard.dice("collected");
            for (ContainerRow row : yard.ours()) {
                boolean leaves = everything ? !row.code.equals(WasteYard.FILTERS) : row.isSealed;
                if (row.collectedAt == null && leaves) {
                    collected(row, dice, yard.playing.present.minus(before));
                }
            }
        });
    }

    private void collected(ContainerRow row, Dice dice, Instant when) {
        Actor actor = yard.actor(Role.HANDOVER_CLERK, dice, Clock.fixed(when, ZoneOffset.UTC));
        LocalDate today = yard.playing.acts.day.of(when);
        boolean weighed = row.code.equals(WasteYard.COOLANT);
        WasteYard.done(yard.playing.acts.collecting.collect(
                new Collecting.ToCollect(
                        dice.id(),
                        row.label,
                        Optional.empty(),
                        (row.hazardous ? "WAINWO/" : "T-") + yard.letter() + String.format("%04d", yard.number(row)),
                        "The works, Line Road 1, waste yard",
                        "29.20",
                        "Dismantling and conversion of vehicles",
                        row.hazardous ? "As the safety data sheets in the works’ folder say" : "",
                        row.hazardous ? "HP 14" : "",
                        yard.packing(row.code),
                        "",
                        weighed
                                ? Optional.of(row.massKg
                                        .multiply(new BigDecimal("1.012"))
                                        .setScale(0, RoundingMode.UP))
                                : Optional.empty(),
                        weighed ? Optional.of("W-" + dice.digits(5)) : Optional.empty(),
                        "Carrier CR-03, Quarry Lane 8",
                        "CR-REG-0417",
                        today,
                        "ZZ21 WST",
                        "Treatment site TS-02, Dock Road 30",
                        "TS-PERMIT-118",
                        today),
                actor));
    }

    /** What the site reports of those that left: most of it recycled. */
    void returned(Duration before) {
        yard.playing.together(() -> {
            Dice dice = yard.dice("returned");
            Instant when = yard.playing.present.minus(before);
            Actor actor = yard.actor(Role.HANDOVER_CLERK, dice, Clock.fixed(when, ZoneOffset.UTC));
            for (ContainerRow row : yard.ours()) {
                if (row.collectedAt != null && !row.isReturned) {
                    BigDecimal energy =
                            row.noteKg.multiply(new BigDecimal("0.08")).setScale(1, RoundingMode.DOWN);
                    BigDecimal lost =
                            row.noteKg.multiply(new BigDecimal("0.05")).setScale(1, RoundingMode.DOWN);
                    WasteYard.done(yard.playing.acts.returning.note(
                            new Returning.ToReturn(
                                    dice.id(),
                                    row.label,
                                    yard.playing.acts.day.of(when),
                                    "Return " + dice.digits(4),
                                    row.noteKg.subtract(energy).subtract(lost),
                                    energy,
                                    lost),
                            actor));
                }
            }
        });
    }
}
