package wainbook.order.specification.page;

import io.restassured.response.Response;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.order.specification.Specification;

/** A bus of the small works in the hands of a works engineer, with the forms of its page filled in. All invented. */
abstract class BusToSpecify {

    OnRecord bus;
    String path;
    Browsing engineer;

    @BeforeEach
    void a_bus_is_ordered() {
        Cast.assemble();
        bus = OnRecord.accepted();
        path = "/orders/" + bus.number() + "/specification";
        engineer = Browsing.as(Cast.WORKS_ENGINEER);
    }

    Specification standing() {
        return Specification.of(bus.history());
    }

    Response stateDuty() {
        return engineer.send(path + "/duty", duty());
    }

    Map<String, Object> fresh() {
        Map<String, Object> form = engineer.form(path);
        form.keySet().removeIf(name -> !name.startsWith("csrf"));
        form.put("id", UUID.randomUUID().toString());
        form.put("judged", standing().seen());
        return form;
    }

    Map<String, Object> duty() {
        Map<String, Object> form = fresh();
        form.putAll(Map.of(
                "words", "Two turns a day, about sixty kilometres",
                "leg1way", "TOWN",
                "leg1km", "34",
                "leg1meanKmh", "17",
                "leg1stopsPerKm", "2.8",
                "leg1loadPercent", "45",
                "passengerClass", "I",
                "seated", "34",
                "standing", "20"));
        form.putAll(Map.of(
                "auxiliaryKw", "7",
                "bodyKwh", "0",
                "room", "SALOON",
                "heater", "HEAT_PUMP",
                "outsideC", "-5",
                "heatedHours", "4",
                "drivingPercent", "15",
                "bodyPercent", "0",
                "oddsPercent", "95"));
        form.putAll(Map.of("startOnPercent", "12", "nightHours", "12", "nightKw", "43", "packsInTheCold", "WARMED"));
        return form;
    }

    Response stateVehicle() {
        return engineer.send(path + "/vehicle", vehicle());
    }

    Map<String, Object> vehicle() {
        Map<String, Object> form = fresh();
        form.putAll(Map.of(
                "body", "BUS",
                "market", "GB",
                "wheelbaseM", "6.0",
                "otherEngine", "false",
                "frontKg", "3900",
                "rearKg", "7600",
                "weighedUncertaintyKg", "20",
                "frontAxleKg", "7500",
                "rearAxleKg", "12000",
                "grossDesignKg", "19500"));
        form.putAll(Map.of(
                "steeringPercent", "25",
                "driverM", "-0.6",
                "loadMiddleM", "4.1",
                "loadLengthM", "0",
                "standingM", "3.2",
                "torqueNm", "5600",
                "ratio", "5.2",
                "efficiencyPercent", "95",
                "wheelRadiusM", "0.49",
                "cdA", "4.9"));
        form.putAll(Map.of("rolling", "0.0065", "windowPercent", "80", "endOfLifePercent", "80"));
        return form;
    }

    Map<String, Object> trace() {
        Map<String, Object> form = fresh();
        form.put("timesADay", "2");
        form.put("traceLoadPercent", "50");
        return form;
    }

    Response choose(int packs, UUID id) {
        return engineer.send(path + "/choice", choice(packs, id));
    }

    Map<String, Object> choice(int packs, UUID id) {
        String page = engineer.page(path);
        Map<String, Object> form = fresh();
        form.put("id", id.toString());
        form.put("library", page.replaceAll("(?s).*name=\"library\" value=\"([0-9]+)\".*", "$1"));
        form.put("packs", packs);
        form.put("packType", "PK-58");
        return form;
    }
}
