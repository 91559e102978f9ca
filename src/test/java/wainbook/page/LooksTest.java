package wainbook.page;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.house.Cast;

@QuarkusTest
class LooksTest {

    private static final List<String> WCAG_22_AA = List.of("wcag2a", "wcag2aa", "wcag21aa", "wcag22aa");

    private static Playwright playwright;
    private static Browser browser;

    @TestHTTPResource("/looks")
    URL looks;

    @BeforeAll
    static void open() {
        Cast.assemble();
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(Path.of("/usr/bin/chromium"))
                        .setChromiumSandbox(false));
    }

    @AfterAll
    static void close() {
        playwright.close();
    }

    @ParameterizedTest
    @CsvSource({"1024, 768, LIGHT", "390, 844, DARK"})
    void everybody_can_read_it_and_nothing_runs_off_the_side(int width, int height, ColorScheme scheme) {
        var options =
                new Browser.NewContextOptions().setViewportSize(width, height).setColorScheme(scheme);
        try (BrowserContext context = browser.newContext(options)) {
            Page page = signedIn(context);
            page.navigate(looks.toString());
            assertThat(new AxeBuilder(page).withTags(WCAG_22_AA).analyze().getViolations())
                    .extracting(Rule::getId)
                    .isEmpty();
            assertThat((int) page.evaluate("document.documentElement.scrollWidth"))
                    .isEqualTo(width);
        }
    }

    @Test
    void everything_to_touch_is_48_pixels_high() {
        try (BrowserContext context = browser.newContext()) {
            Page page = signedIn(context);
            page.navigate(looks.toString());
            assertThat((List<?>) page.evaluate("[...document.querySelectorAll('main button, main .button, main select,"
                            + " main textarea, main summary, main .pick,"
                            + " main input:not([type=radio],[type=checkbox])')]"
                            + ".filter(e => e.getBoundingClientRect().height < 48).map(e => e.outerHTML)"))
                    .isEmpty();
        }
    }

    @Test
    void escape_closes_a_fold_and_gives_the_focus_back() {
        try (BrowserContext context = browser.newContext()) {
            Page page = signedIn(context);
            page.navigate(looks.toString());
            page.focus("main details.more > summary");
            page.keyboard().press("Enter");
            assertThat(page.evaluate("document.activeElement.parentElement.open"))
                    .isEqualTo(true);
            page.keyboard().press("Escape");
            assertThat(page.evaluate("document.activeElement.parentElement.open"))
                    .isEqualTo(false);
        }
    }

    @Test
    void at_twice_the_size_the_content_begins_in_the_upper_half() {
        try (BrowserContext context = browser.newContext(new Browser.NewContextOptions().setViewportSize(512, 384))) {
            Page page = signedIn(context);
            page.navigate(looks.toString());
            assertThat(((Number) page.evaluate("document.querySelector('main').getBoundingClientRect().top"))
                            .intValue())
                    .isLessThan(192);
        }
    }

    @Test
    void a_sign_in_page_of_another_works_shows_no_demo() {
        assertThat(signIn(new SignIn(SignIn.After.NOTHING, Optional.empty())))
                .contains("action=\"/j_security_check\"", "autocomplete=\"current-password\"")
                .doesNotContain("Demo works", "role=\"alert\"");
    }

    @Test
    void a_demo_works_names_its_users() {
        var demo = new SignIn.Demo(List.of(new SignIn.User("okafor", "Technician")), "open-to-all");
        assertThat(signIn(new SignIn(SignIn.After.FAILED, Optional.of(demo))))
                .contains("okafor", "open-to-all", "do not belong together");
    }

    @Test
    void what_is_shown_never_becomes_markup() {
        var demo = new SignIn.Demo(List.of(new SignIn.User("<b>", "\"&")), "x");
        assertThat(signIn(new SignIn(SignIn.After.THROTTLED, Optional.of(demo))))
                .contains("&lt;b&gt;", "Too many failed tries")
                .doesNotContain("<b>");
    }

    @Test
    void styles_signs_and_type_come_from_here() {
        for (String path : List.of(
                "/css/wainbook.css",
                "/img/signs.svg",
                "/favicon.svg",
                "/js/connection.js",
                "/js/fold.js",
                "/fonts/next-latin-400.woff2",
                "/webjars/htmx.org/2.0.8/dist/htmx.min.js")) {
            given().get(path).then().statusCode(200);
        }
        given().get("/sign-in").then().body(containsString("/css/wainbook.css?v="), not(containsString("://")));
    }

    private Page signedIn(BrowserContext context) {
        Page page = context.newPage();
        page.navigate(looks.toString());
        page.fill("[name=j_username]", Cast.TECHNICIAN.user());
        page.fill("[name=j_password]", Cast.PASSWORD);
        page.click("main button");
        return page;
    }

    private static String signIn(SignIn signIn) {
        return Pages.signIn(signIn).render();
    }
}
