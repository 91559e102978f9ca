package wainbook.walk;

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@QuarkusTest
@Tag("database")
class ApiWalkTest {

    @Test
    void a_bus_goes_its_whole_way_by_the_api() {
        WalkClock clock = Stage.morning(1);
        var bus = new Vehicle("WB-API-1", "WBKZZZ1234567890W");
        var inTheWay = new Vehicle("WB-API-2", "WBKZZZ9876543210W");
        new WholeWay(bus, new ApiHands(bus, clock), new ApiHands(inTheWay, clock), clock).walk();
    }
}
