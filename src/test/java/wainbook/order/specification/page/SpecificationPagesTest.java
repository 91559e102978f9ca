package wainbook.order.specification.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.order.specification.SpecificationSaying.DutyStated;

/** A bus of the small works, from an operator's words to its number of packs. All invented. */
@QuarkusTest
@Tag("database")
class SpecificationPagesTest extends BusToSpecify {

    @Test
    void an_order_without_a_duty_says_what_to_state_first() {
        assertThat(engineer.page(path)).contains("No table yet", "The duty is not stated", "The vehicle is not stated");
        assertThat(Browsing.as(Cast.AUDITOR).page(path))
                .contains("No table yet")
                .doesNotContain("State the duty</button>");
    }

    @Test
    void from_a_duty_and_a_vehicle_to_the_fewest_packs_and_their_choice() {
        assertThat(stateDuty().statusCode()).isEqualTo(303);
        assertThat(stateVehicle().statusCode()).isEqualTo(303);
        String page = engineer.page(path);
        assertThat(page)
                .contains("PK-58: the fewest that meet the worst day with 95 %", "kWh short at the end of life")
                .contains("/calculations/axle-loads?", "/calculations/packs?");
        int fewest = Integer.parseInt(page.replaceAll("(?s).*?name=\"packs\" value=\"([0-9]+)\".*", "$1"));
        assertThat(choose(fewest, UUID.randomUUID()).statusCode()).isEqualTo(303);
        assertThat(engineer.page(path)).contains(fewest + " packs PK-58 specified");
        assertThat(standing().standing().orElseThrow().what().predicted()).hasSize(2);
        assertThat(engineer.page(path + "/table.csv"))
                .startsWith("packs,verdict")
                .contains("will not do");
        assertThat(engineer.page("/orders/" + bus.number() + "/facts?fact=packs"))
                .contains("Offered by the specification", "value=\"" + fewest + "\"");
    }

    @Test
    void a_choice_outside_the_limits_is_refused_with_its_reasons() {
        stateDuty();
        stateVehicle();
        Response refused = choose(1, UUID.randomUUID());
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.asString()).contains("short at the end of life", "Take more packs");
        assertThat(choose(9, UUID.randomUUID()).asString()).contains("There are 4 places");
        assertThat(standing().chosen()).isEmpty();
    }

    @Test
    void a_choice_sent_twice_is_written_once_and_an_old_page_is_refused() {
        stateDuty();
        stateVehicle();
        UUID id = UUID.randomUUID();
        Map<String, Object> old = choice(4, id);
        assertThat(engineer.send(path + "/choice", old).statusCode()).isEqualTo(303);
        assertThat(engineer.send(path + "/choice", old).statusCode()).isEqualTo(303);
        assertThat(standing().chosen()).hasSize(1);
        old.put("id", UUID.randomUUID().toString());
        Response stale = engineer.send(path + "/choice", old);
        assertThat(stale.statusCode()).isEqualTo(409);
        assertThat(stale.asString()).contains("changed after this page was drawn");
        assertThat(engineer.page(path)).doesNotContain("name=\"packs\" value=\"4\"");
        stateDuty();
        assertThat(engineer.page(path)).contains("stated anew after the choice", "name=\"packs\" value=\"4\"");
        assertThat(choose(4, UUID.randomUUID()).statusCode()).isEqualTo(303);
        assertThat(engineer.page(path)).contains("Chosen before");
    }

    @Test
    void a_faulty_duty_comes_back_with_all_that_was_typed() {
        Map<String, Object> form = duty();
        form.put("leg1km", "far");
        form.put("nightKw", "5000");
        Response back = engineer.send(path + "/duty", form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("value=\"far\"", "Part 1, distance, km is no figure", "Two turns a day");
        form.put("leg1km", "34");
        assertThat(engineer.send(path + "/duty", form).asString()).contains("Power of the charger lies between");
    }

    @Test
    void a_recorded_way_is_checked_line_by_line_and_kept() {
        stateDuty();
        stateVehicle();
        Map<String, Object> form = trace();
        Response faulty = engineer.send(
                path + "/trace", form, "way.csv", "speed_kmh\n0\nfast\n".getBytes(StandardCharsets.UTF_8), "text/csv");
        assertThat(faulty.statusCode()).isEqualTo(422);
        assertThat(faulty.asString()).contains("Line 3", "is no figure");
        String way = "speed_kmh\n0\n" + "20\n".repeat(600) + "0\n";
        Response kept =
                engineer.send(path + "/trace", form, "way.csv", way.getBytes(StandardCharsets.UTF_8), "text/csv");
        assertThat(kept.statusCode()).isEqualTo(303);
        assertThat(engineer.page(path)).contains("A recorded way belongs to this duty", "Recorded way");
    }

    @Test
    void cold_years_and_tyres_are_asked_and_shown() {
        Map<String, Object> open = duty();
        open.put("packsInTheCold", "");
        assertThat(engineer.send(path + "/duty", open).statusCode()).isEqualTo(422);
        Map<String, Object> form = duty();
        form.putAll(Map.of("packsInTheCold", "AS_THE_AIR", "daysPerYear", "250", "years", "8"));
        assertThat(engineer.send(path + "/duty", form).statusCode()).isEqualTo(303);
        Map<String, Object> vehicle = vehicle();
        vehicle.putAll(Map.of("thousandCyclesPercent", "5", "yearPercent", "1.2"));
        vehicle.putAll(Map.of("tyreFRONTnumber", "2", "tyreFRONTloadKg", "3550", "tyreFRONTspeedKmh", "40"));
        Response unsourced = engineer.send(path + "/vehicle", vehicle);
        assertThat(unsourced.asString()).contains("has no source", "value=\"3550\"");
        vehicle.put("ageingSource", "Data sheet, invented");
        assertThat(engineer.send(path + "/vehicle", vehicle).statusCode()).isEqualTo(303);

        assertThat(engineer.page(path))
                .contains("packs as cold as the air give 87.5 %", "Range at end of life, coldest day")
                .contains("How long it lasts", "5 % lost with a thousand full cycles", "8 years asked")
                .contains("2 tyres of 3550 kg, together 7100 kg, up to 40 km/h", "holds up to 40 km/h")
                .contains("The tyres of this axle are not stated");
    }

    /** A script that does not answer means what it meant before. */
    @Test
    void what_was_not_asked_is_said_on_the_page() {
        stateDuty();
        stateVehicle();
        String api = "/api/v1/orders/" + bus.number() + "/specification";
        Map<String, Object> known =
                new HashMap<>(Cast.WORKS_ENGINEER.asks().get(api).jsonPath().getMap("duty"));
        known.remove("packsInTheCold");
        Cast.WORKS_ENGINEER
                .asks()
                .contentType("application/json")
                .body(Map.of("id", UUID.randomUUID(), "judged", standing().seen(), "duty", known))
                .post(api + "/duty")
                .then()
                .statusCode(201);

        assertThat(engineer.page(path)).contains("was not asked when this was specified", "are not stated");
        assertThat(standing().duty().orElseThrow().what().packsInTheCold()).isEmpty();
    }

    @Test
    void where_the_energy_goes_is_shown_for_each_number_of_packs() {
        String energy = path + "/energy";
        assertThat(engineer.page(energy)).contains("No figures yet", "The duty is not stated");
        stateDuty();
        stateVehicle();

        assertThat(engineer.page(energy + "?packs=3"))
                .contains(
                        "3 packs PK-58", "1 Town", "From the usual day to the worst", "Rolling", "class=\"piece p1\"");
        assertThat(engineer.page(energy + "?packs=9")).contains("There are 4 places");
        assertThat(engineer.page(energy + "?packs=x")).contains("The day with");
        assertThat(engineer.page(energy + "/parts.csv?packs=3"))
                .startsWith("part,km,h,")
                .contains("\"1 Town\",34.0000,2.0000", "Worst day: Day");
        Cast.AUDITOR
                .asks()
                .get("/api/v1/orders/" + bus.number() + "/specification/energy?packs=3")
                .then()
                .statusCode(200)
                .body("day.parts[0].km", equalTo(34.0f))
                .body("usualKwh", greaterThan(30f));
        Cast.AUDITOR
                .asks()
                .get("/api/v1/orders/" + bus.number() + "/specification/energy?packs=9")
                .then()
                .statusCode(404);
    }

    @Test
    void nobody_else_states_a_duty() {
        assertThat(Browsing.as(Cast.TECHNICIAN).send(path + "/duty", duty()).statusCode())
                .isIn(400, 403);
        assertThat(bus.history().saying(DutyStated.class)).isEmpty();
    }

    @Test
    void a_number_of_packs_that_the_route_does_not_fit_is_said_at_once_and_bars_the_gate_that_reads_them() {
        stateDuty();
        stateVehicle();
        assertThat(engineer.page(path)).contains("The route BUS-12M fits 2 packs");
        assertThat(choose(4, UUID.randomUUID()).statusCode()).isEqualTo(303);
        assertThat(engineer.page(path)).contains("4 packs are specified, and the route BUS-12M fits 2");
        bus.at("strip", "ST-1").signed().at("fitting", "ST-2");

        assertThat(Browsing.as(Cast.INSPECTOR).page("/gates/" + bus.number() + "/fitting"))
                .contains("4 packs PK-58 are specified, and 0 are fitted", "choose the specification anew");
        assertThat(Browsing.as(Cast.INSPECTOR).page("/gates/" + bus.number() + "/strip"))
                .doesNotContain("packs PK-58 are specified");
        bus.out();
    }

    @Test
    void what_is_asked_of_driving_is_put_on_record_and_the_last_gate_misses_it() {
        String driving = "/orders/" + bus.number() + "/calibration";
        assertThat(engineer.page(driving)).contains("Nothing is asked of how this vehicle drives");
        Map<String, Object> form = engineer.form(driving);
        form.putAll(Map.of(
                "ROAD_SPEED_LIMITValue", "800",
                "ROAD_SPEED_LIMITTolerance", "0.5",
                "ROAD_SPEED_LIMITBy", "OPERATOR",
                "ROAD_SPEED_LIMITWhy", "No way of the fleet needs more"));
        Response slip = engineer.send(driving, form);
        assertThat(slip.statusCode()).isEqualTo(422);
        assertThat(slip.asString()).contains("slip of typing", "value=\"800\"", "No way of the fleet needs more");
        form.put("ROAD_SPEED_LIMITValue", "80,5");
        assertThat(engineer.send(driving, form).statusCode()).isEqualTo(303);
        assertThat(engineer.send(driving, form).statusCode()).isEqualTo(303);
        form.put("id", UUID.randomUUID().toString());
        assertThat(engineer.send(driving, form).statusCode()).isEqualTo(409);
        assertThat(engineer.page(driving)).contains("80.5", "not read in the vehicle yet");
        assertThat(engineer.page(driving + "/file.csv")).contains("80.5,0.5,");
        bus.at("commissioning", "ST-3");

        String gate = Browsing.as(Cast.INSPECTOR).page("/gates/" + bus.number() + "/commissioning");

        assertThat(gate)
                .contains("The vehicle does not have the calibration asked for")
                .contains("The calibration of the control unit is not on record", "changed by who asked")
                .contains("Nothing is specified of packs and parts");
        bus.out();
    }
}
