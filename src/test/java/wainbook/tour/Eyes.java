package wainbook.tour;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.Media;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;

/** Looks at pages in a browser and notes what is wrong with them: everybody must be able to read every page. */
final class Eyes implements AutoCloseable {

    private static final Path PICTURES = Path.of("target/looks");

    /** The user of whoever is not signed in. */
    static final String STRANGER = "";

    private final String base;
    private final String password;
    private final Playwright playwright;
    private final Browser browser;
    private final Map<String, Page> signedIn = new HashMap<>();
    private final List<String> wrong = new ArrayList<>();
    private int pages;

    Eyes(String base, String password) {
        this.base = base.replaceFirst("/$", "");
        this.password = password;
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(Path.of("/usr/bin/chromium"))
                        .setChromiumSandbox(false));
    }

    /** What was found, one line a fault. */
    List<String> wrong() {
        return wrong;
    }

    Page as(String user) {
        return signedIn.computeIfAbsent(user, name -> {
            BrowserContext context = browser.newContext();
            Page page = context.newPage();
            page.onConsoleMessage(message -> {
                if (message.type().equals("error")) {
                    wrong.add(page.url() + " console: " + message.text());
                }
            });
            page.onPageError(error -> wrong.add(page.url() + " script: " + error));
            if (!name.equals(STRANGER)) {
                page.navigate(base + "/sign-in");
                page.fill("[name=j_username]", name);
                page.fill("[name=j_password]", password);
                page.click("form[action='/j_security_check'] button");
            }
            return page;
        });
    }

    Page open(String user, String path) {
        Page page = as(user);
        Response answer = page.navigate(base + path);
        if (answer.status() != 200) {
            wrong.add(path + " as " + user + ": status " + answer.status());
        }
        return page;
    }

    /** Looks at what is left of these, which others may be taking from too. */
    void lookAt(Queue<Visit> visits, Set<String> mayBeBare) {
        for (Visit visit = visits.poll(); visit != null; visit = visits.poll()) {
            look(visit.user(), visit.path(), Size.wanted());
            Locator bare = as(visit.user()).locator("main .empty");
            if (!mayBeBare.contains(visit.path()) && bare.count() > 0) {
                wrong.add(visit.path() + ": there is nothing on it: "
                        + bare.first().innerText());
            }
        }
    }

    /** Looks at a page at these sizes. */
    void look(String user, String path, List<Size> sizes) {
        Page page = open(user, path);
        pages++;
        if (page.innerText("body").contains("Optional[")) {
            wrong.add(path + ": says Optional[…] to people");
        }
        for (Size size : sizes) {
            page.setViewportSize(size.width(), size.height());
            page.emulateMedia(
                    new Page.EmulateMediaOptions().setColorScheme(size.scheme()).setMedia(Media.SCREEN));
            String where = path + " at " + size;
            axe(page, where);
            int width = (int) page.evaluate("document.documentElement.scrollWidth");
            if (width > size.width()) {
                wrong.add(where + ": runs off the side, to " + width);
            }
            if (sizes.size() > 1) {
                keep(page, path, size);
            }
        }
    }

    /** In the page itself: no page here has frames, and a second page for each look would double the time. */
    private void axe(Page page, String where) {
        new AxeBuilder(page)
                .setLegacyMode(true)
                .analyze()
                .getViolations()
                .forEach(rule -> wrong.add(where + ": " + rule.getId() + " "
                        + rule.getNodes().get(0).getHtml()));
    }

    private void keep(Page page, String path, Size size) {
        String name = "%03d%s-%s.png".formatted(pages, path.replaceAll("[^A-Za-z0-9]+", "-"), size);
        page.screenshot(
                new Page.ScreenshotOptions().setPath(PICTURES.resolve(name)).setFullPage(true));
    }

    @Override
    public void close() {
        playwright.close();
    }
}
