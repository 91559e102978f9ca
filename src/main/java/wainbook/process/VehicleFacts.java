package wainbook.process;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wainbook.predicate.FactType;
import wainbook.predicate.Predicates;
import wainbook.predicate.Vocabulary;

/**
 * The facts of a vehicle that a condition may speak of, of a check item and of a rule about documents alike, and how they are
 * read from what was stated. One list, so that a fact is entered once and means the same everywhere.
 */
public final class VehicleFacts {

    public static final Vocabulary VOCABULARY = new Vocabulary(types());

    /** Shared: made once, since the first one is slow. */
    public static final Predicates PREDICATES = new Predicates(VOCABULARY);

    private VehicleFacts() {}

    private static Map<String, FactType> types() {
        var types = new LinkedHashMap<String, FactType>();
        declare(
                types,
                FactType.TEXT,
                "vehicle_kind variant category keeper body_kind refrigerant market engine_fate insured_by");
        declare(
                types,
                FactType.TRUTH,
                "power_take_off tail_lift heat_pump wheelchair_ramp roof_packs air_conditioning kept_identity "
                        + "bus_articulated axle_plates_changed propulsion_changed other_engine_on_board brakes_changed "
                        + "steering_changed chassis_cut_or_drilled tyres_changed final_ratio_or_sensor_changed "
                        + "tacho_fitted limiter_required crane_or_hook_loader lift_removed_and_refitted cold_unit "
                        + "pressure_vessel_other charge_ac charge_dc seats_or_standing_changed wheelchair_place "
                        + "adr_vehicle sold_by_works emission_claim first_responder_data grant "
                        + "packs_first_placed_by_works packs_shipped international_use new_base_vehicle packs_new "
                        + "packs_reused_or_rebuilt packs_first_placed_in_state lift_fitted_new warning_sound_asked");
        declare(types, FactType.WHOLE, "packs axles");
        // Masses in kilograms, ages in years.
        declare(types, FactType.NUMBER, "gross_design gross_plated_old gross_plated_new tyre_age charge_kg");
        declare(types, FactType.DATE, "first_registered tacho_calibrated packs_first_in_service");
        declare(types, FactType.TEXTS, "pack_types waste_streams");
        return types;
    }

    private static void declare(Map<String, FactType> types, FactType type, String names) {
        for (String name : names.split(" ")) {
            types.put(name, type);
        }
    }

    /** Whether the text states the fact in its type. */
    public static boolean states(String fact, String stated) {
        return read(fact, stated).isPresent();
    }

    /** What was stated, each in its type; what does not read is left out and so stays unknown. */
    public static Map<String, Object> typed(Map<String, String> stated) {
        var typed = new LinkedHashMap<String, Object>();
        stated.forEach((fact, text) -> read(fact, text).ifPresent(value -> typed.put(fact, value)));
        return typed;
    }

    private static Optional<Object> read(String fact, String text) {
        return Optional.ofNullable(VOCABULARY.types().get(fact)).flatMap(type -> type.parse(text));
    }
}
