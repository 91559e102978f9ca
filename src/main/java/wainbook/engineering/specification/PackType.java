package wainbook.engineering.specification;

import java.util.List;
import wainbook.engineering.energy.store.Window;
import wainbook.engineering.weights.TwoAxles;

/**
 * Packs of one kind and the places for them.
 *
 * @param massKg with frame and cooling
 * @param window share of the nominal energy that may be used
 * @param endOfLife state of health to which a specification is made
 * @param placesM behind the front axle, in the order in which they are filled
 */
public record PackType(double nominalKwh, double massKg, double window, double endOfLife, List<Double> placesM) {

    public PackType {
        placesM = List.copyOf(placesM);
    }

    public double usableNewKwh(int packs) {
        return packs * new Window(nominalKwh, window, 1).usableKwh();
    }

    public double usableAtEndKwh(int packs) {
        return packs * new Window(nominalKwh, window, endOfLife).usableKwh();
    }

    public TwoAxles into(TwoAxles bare, int packs) {
        TwoAxles axles = bare;
        for (double place : placesM.subList(0, packs)) {
            axles = axles.with(massKg, place);
        }
        return axles;
    }
}
