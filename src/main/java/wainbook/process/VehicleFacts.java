package wainbook.process;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import wainbook.predicate.FactType;
import wainbook.predicate.Predicates;
import wainbook.predicate.Vocabulary;

/**
 * What may be known about a vehicle and asked in a condition: of a check item, and of a rule about documents. One list, so
 * that a fact is entered once and means the same everywhere. Masses are in kilograms, ages in years.
 */
public final class VehicleFacts {

    private static final Map<FactType, String> NAMES = Map.of(
            FactType.TEXT, "category keeper body_kind refrigerant market engine_fate insured_by grant vehicle_kind",
            FactType.TRUTH,
                    "kept_identity bus_articulated axle_plates_changed propulsion_changed "
                            + "other_engine_on_board brakes_changed steering_changed chassis_cut_or_drilled tyres_changed "
                            + "final_ratio_or_sensor_changed tacho_fitted limiter_required tail_lift crane_or_hook_loader "
                            + "lift_removed_and_refitted lift_new cold_unit refrigerant_handled pressure_vessel_other charge_ac "
                            + "charge_dc roof_packs seats_or_standing_changed wheelchair_place adr_vehicle sold_by_works "
                            + "emission_claim first_responder_data used_as_psv floor_or_ramp_changed packs_first_placed_by_works "
                            + "packs_shipped international_use",
            FactType.WHOLE, "axles pack_count",
            FactType.NUMBER, "gross_design gross_plated_old gross_plated_new tyre_age charge_kg",
            FactType.DATE, "first_registered tacho_calibrated",
            FactType.TEXTS, "packs waste_streams");

    private VehicleFacts() {}

    public static Vocabulary vocabulary() {
        var types = new LinkedHashMap<String, FactType>();
        NAMES.forEach((type, names) -> Arrays.stream(names.split(" ")).forEach(name -> types.put(name, type)));
        return new Vocabulary(types);
    }

    /** Costs some tenths of a second: make it once and keep it. */
    public static Predicates predicates() {
        return new Predicates(vocabulary());
    }
}
