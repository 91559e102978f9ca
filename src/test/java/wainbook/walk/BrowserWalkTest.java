package wainbook.walk;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class BrowserWalkTest {

    private static final List<String> AROUND = List.of(
            "/line",
            "/orders",
            "/orders/WB-PAGE-1",
            "/orders/WB-PAGE-2",
            "/orders/WB-PAGE-2/move",
            "/gates",
            "/isolation",
            "/locks",
            "/locks/labels",
            "/handover",
            "/handover/WB-PAGE-1",
            "/handover/WB-PAGE-1/record",
            "/handover/WB-PAGE-1/record/receipt",
            "/process/handover-lists",
            "/matters",
            "/calculations",
            "/calculations/bonding?currentA=0.2&voltageV=0.0146",
            "/tokens",
            "/looks",
            "/station/WB-PAGE-2");

    @TestHTTPResource
    URL base;

    @Test
    void a_bus_goes_its_whole_way_by_the_pages() {
        WalkClock clock = Stage.morning(2);
        var bus = new Vehicle("WB-PAGE-1", "WBKZZZ1234567890X");
        var inTheWay = new Vehicle("WB-PAGE-2", "WBKZZZ9876543210X");
        try (Playwright playwright = Playwright.create(
                        new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
                Browser browser = playwright
                        .chromium()
                        .launch(new BrowserType.LaunchOptions()
                                .setExecutablePath(Path.of("/usr/bin/chromium"))
                                .setChromiumSandbox(false));
                var hands = new BrowserHands(bus, browser, base.toString().replaceFirst("/$", ""), clock)) {
            new WholeWay(bus, hands, new ApiHands(inTheWay, clock), clock).walk();
            hands.look("fatima", AROUND);
            hands.look("ruben", List.of("/verification"));
            assertThat(hands.console()).isEmpty();
        }
    }
}
