package wainbook.station.serial;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.house.OwnSheet;
import wainbook.ledger.Rebuild;
import wainbook.process.sheet.Ask;

/** A part is on one vehicle: its serial stands on record for one, until the entry is voided. */
@QuarkusTest
@Tag("database")
class OnePartOneVehicleTest {

    @Inject
    Rebuild rebuild;

    private Donor first;
    private Donor second;
    private String serial;

    @BeforeEach
    void two_donors_at_their_survey() {
        Cast.assemble();
        first = Donor.received();
        second = Donor.received();
        serial = UUID.randomUUID().toString().substring(0, 18);
    }

    @Test
    void the_same_serial_at_a_second_vehicle_is_refused_and_names_the_first() {
        read(first, serial).then().statusCode(201);
        Response refused = read(second, serial);
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.jsonPath().getList("reasons.key")).containsExactly("station.serialElsewhere");
        assertThat(refused.jsonPath().getString("reasons[0].text")).contains("vehicle " + first.number());
        read(second, serial + "-2").then().statusCode(201);
    }

    @Test
    void a_voided_entry_frees_its_serial() {
        String entry = read(first, serial).jsonPath().getString("id");
        read(second, serial).then().statusCode(409);
        first.send(Cast.TECHNICIAN, "/voids", Map.of("id", Donor.id(), "entry", entry, "reason", "read from another"))
                .then()
                .statusCode(201);
        read(second, serial).then().statusCode(201);
        read(first, serial).then().statusCode(409);
    }

    @Test
    void after_a_void_the_vehicle_may_have_the_same_part_again() {
        String entry = read(first, serial).jsonPath().getString("id");
        first.send(Cast.TECHNICIAN, "/voids", Map.of("id", Donor.id(), "entry", entry, "reason", "not legible"))
                .then()
                .statusCode(201);
        read(first, serial).then().statusCode(201);
        read(second, serial).then().statusCode(409);
    }

    @Test
    void of_two_who_read_it_at_once_one_is_told_of_the_other() throws Exception {
        var together = new CyclicBarrier(2);
        var pool = Executors.newFixedThreadPool(2);
        try {
            List<Callable<Response>> readers = new ArrayList<>();
            for (Donor donor : List.of(first, second)) {
                readers.add(() -> {
                    together.await();
                    return read(donor, serial);
                });
            }
            var keys = new ArrayList<List<String>>();
            for (var answer : pool.invokeAll(readers)) {
                keys.add(
                        answer.get().statusCode() == 201
                                ? List.of()
                                : answer.get().jsonPath().getList("reasons.key"));
            }
            assertThat(keys).containsExactlyInAnyOrder(List.of(), List.of("station.serialElsewhere"));
        } finally {
            pool.shutdownNow();
        }
    }

    @Test
    void two_items_of_one_vehicle_may_read_the_same_part_and_either_keeps_it() {
        var pack = new Ask.Serial("PACK", Optional.empty());
        var sheet = OwnSheet.released(
                OwnSheet.item("fit", "Fit the pack", pack, 5), OwnSheet.item("test", "Test the pack", pack, 5));
        var one = Donor.received(sheet.route());
        var other = Donor.received(sheet.route());
        String fitted = read(one, "fit", serial).jsonPath().getString("id");
        String tested = read(one, "test", serial).jsonPath().getString("id");
        voided(one, fitted);
        read(other, "fit", serial).then().statusCode(409);
        assertTheTablesAreMadeAgainAsTheyWere();
        read(one, "fit", serial).then().statusCode(201);
        voided(one, tested);
        read(other, "fit", serial).then().statusCode(409);
        assertTheTablesAreMadeAgainAsTheyWere();
    }

    @Test
    void another_part_at_the_same_item_frees_the_former() {
        var pack = new Ask.Serial("PACK", Optional.empty());
        var sheet = OwnSheet.released(OwnSheet.item("fit", "Fit the pack", pack, 5));
        var one = Donor.received(sheet.route());
        var other = Donor.received(sheet.route());
        read(one, "fit", serial).then().statusCode(201);
        sheet.next(OwnSheet.item("fit", "Fit the pack with its new bracket", pack, 5));
        one.send(Cast.WORKS_ENGINEER, "/rebinding", Map.of("id", Donor.id(), "revision", 2))
                .then()
                .statusCode(201);
        read(other, "fit", serial).then().statusCode(409);
        read(one, "fit", serial + "-2").then().statusCode(201);
        read(other, "fit", serial).then().statusCode(201);
        assertTheTablesAreMadeAgainAsTheyWere();
    }

    @Test
    void the_same_part_read_again_at_the_same_item_stays_on_the_vehicle() {
        var sheet =
                OwnSheet.released(OwnSheet.item("fit", "Fit the pack", new Ask.Serial("PACK", Optional.empty()), 5));
        var one = Donor.received(sheet.route());
        read(one, "fit", serial).then().statusCode(201);
        sheet.next(OwnSheet.item("fit", "Fit it", new Ask.Serial("PACK", Optional.empty()), 5));
        one.send(Cast.WORKS_ENGINEER, "/rebinding", Map.of("id", Donor.id(), "revision", 2));
        read(one, "fit", serial).then().statusCode(201);
        assertThat(parts()).contains("PACK " + serial + " " + one.number());
        assertTheTablesAreMadeAgainAsTheyWere();
    }

    /** The later of them has it; made again stream by stream, whichever comes first. */
    @Test
    void a_part_that_went_from_one_vehicle_to_another_stays_there_when_the_tables_are_made_again() {
        for (List<Donor> way : List.of(List.of(first, second), List.of(second, first))) {
            String moving = serial + "-" + way.get(0).number();
            voided(way.get(0), read(way.get(0), moving).jsonPath().getString("id"));
            String id = read(way.get(1), moving).jsonPath().getString("id");
            assertThat(parts()).contains("ENGINE " + moving + " " + way.get(1).number());
            assertTheTablesAreMadeAgainAsTheyWere();
            voided(way.get(1), id);
        }
    }

    @Test
    void the_number_of_the_vehicle_itself_is_no_part() {
        first.record(Cast.TECHNICIAN, "vin", Map.of("serial", "WBKZZZ1234567890X"))
                .then()
                .statusCode(201);
        assertThat(parts()).noneMatch(part -> part.contains("WBKZZZ1234567890X"));
    }

    private void assertTheTablesAreMadeAgainAsTheyWere() {
        List<String> before = parts();
        assertThat(before).isNotEmpty();
        rebuild.everything();
        assertThat(parts()).isEqualTo(before);
    }

    private static Response read(Donor donor, String serial) {
        return read(donor, "engine-number", serial);
    }

    private static Response read(Donor donor, String item, String serial) {
        return donor.record(Cast.TECHNICIAN, item, Map.of("serial", serial));
    }

    private static void voided(Donor donor, String entry) {
        donor.send(Cast.TECHNICIAN, "/voids", Map.of("id", Donor.id(), "entry", entry, "reason", "another part"))
                .then()
                .statusCode(201);
    }

    private static List<String> parts() {
        return QuarkusTransaction.requiringNew()
                .call(() -> PartSerial.<PartSerial>listAll().stream()
                        .map(row -> row.part + " " + row.serialNumber + " " + row.workOrder)
                        .sorted()
                        .toList());
    }
}
