package wainbook.line.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.assertions.PageAssertions;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URI;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.house.Relay;
import wainbook.page.Globals;
import wainbook.station.StationSaying.Help;
import wainbook.station.StationSaying.HelpCalled;

/** The line page as somebody has it open: what happens appears by itself and takes nothing from their hands. */
@QuarkusTest
class LiveInBrowserTest {

    /** A ceiling, no expectation. */
    private static final double AT_MOST_MS = 60_000;

    @TestHTTPResource("/")
    URI app;

    private OnRecord bus;
    private Playwright playwright;
    private Browser browser;
    private Relay relay;

    @BeforeEach
    void a_bus_stands_on_the_line() {
        Cast.assemble();
        bus = OnRecord.accepted().at("strip", "ST-1");
        relay = new Relay(app);
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(Path.of("/usr/bin/chromium"))
                        .setChromiumSandbox(false));
    }

    @AfterEach
    void the_station_is_free_again() {
        playwright.close();
        relay.close();
        bus.out();
    }

    private Page line() {
        Page page = browser.newContext().newPage();
        page.navigate(relay.address() + "/line");
        page.fill("[name=j_username]", Cast.LINE_MANAGER.user());
        page.fill("[name=j_password]", Cast.PASSWORD);
        page.click("form[action='/j_security_check'] button");
        assertThat(page.locator("#connection")).hasText("connected");
        return page;
    }

    private void calls(int number, Help help) {
        bus.say(new HelpCalled(number, help, Optional.of("strip"), Optional.of("ST-1"), Optional.empty(), false));
    }

    private static void says(Locator where, String text) {
        assertThat(where).containsText(text, new LocatorAssertions.ContainsTextOptions().setTimeout(AT_MOST_MS));
    }

    @Test
    void a_call_for_help_appears_by_itself_and_leaves_focus_scroll_and_selection_alone() {
        Page page = line();
        page.setViewportSize(1024, 400);
        page.locator("#at-ST-1").focus();
        page.evaluate(
                "window.scrollTo(0, 120); getSelection().selectAllChildren(document.querySelector('.line-head'))");
        Object scrolled = page.evaluate("scrollY");
        calls(1, Help.MAINTENANCE);
        says(page.locator("#stations"), "Help called: maintenance");
        assertThat(page.locator("#at-ST-1")).isFocused();
        assertThat(page.evaluate("scrollY")).isEqualTo(scrolled);
        assertThat((String) page.evaluate("String(getSelection())")).contains("made today");
    }

    @Test
    void a_broken_connection_is_said_in_words_and_what_was_missed_is_caught_up_with() {
        Page page = line();
        calls(1, Help.MAINTENANCE);
        says(page.locator("#stations"), "Help called: maintenance");
        relay.cut();
        says(page.locator("#connection"), "trying again");
        calls(2, Help.QUALITY);
        relay.mend();
        says(page.locator("#stations"), "Help called: quality");
        assertThat(page.locator("#connection"))
                .hasText("connected", new LocatorAssertions.HasTextOptions().setTimeout(AT_MOST_MS));
    }

    @Test
    void whoever_signed_out_elsewhere_comes_to_the_sign_in_page_and_back() {
        Page page = line();
        calls(1, Help.MAINTENANCE);
        says(page.locator("#stations"), "Help called: maintenance");
        Page other = page.context().newPage();
        other.navigate(relay.address() + "/gates");
        other.click("form[action='/sign-out'] button");
        assertThat(page)
                .hasURL(Pattern.compile(".*/sign-in"), new PageAssertions.HasURLOptions().setTimeout(AT_MOST_MS));
        page.fill("[name=j_username]", Cast.LINE_MANAGER.user());
        page.fill("[name=j_password]", Cast.PASSWORD);
        page.click("form[action='/j_security_check'] button");
        assertThat(page).hasURL(Pattern.compile(".*/line"));
    }

    @Test
    void a_page_of_an_older_version_loads_itself_anew() {
        Page page = line();
        calls(1, Help.QUALITY);
        says(page.locator("#stations"), "Help called: quality");
        page.evaluate("document.documentElement.dataset.assets = 'older'");
        calls(2, Help.MAINTENANCE);
        assertThat(page.locator("html"))
                .hasAttribute(
                        "data-assets",
                        Globals.assets(),
                        new LocatorAssertions.HasAttributeOptions().setTimeout(AT_MOST_MS));
        says(page.locator("#stations"), "Help called: maintenance");
    }

    @Test
    void nothing_in_a_part_that_is_told_anew_can_be_typed_into() {
        Browsing manager = Browsing.as(Cast.LINE_MANAGER);
        assertThat(manager.page("/line/stations") + manager.page("/wall/posts"))
                .doesNotContain("<input", "<textarea", "<select", "<button");
    }
}
