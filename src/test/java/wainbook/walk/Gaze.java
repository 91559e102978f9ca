package wainbook.walk;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Looks at every page the first time a walk comes by, and again whenever it shows parts that it did not show together before:
 * everybody must be able to read it, and nothing may run off the side. With {@code -Dlooks=folder} it also keeps pictures at three sizes, light and dark, for people to see.
 */
final class Gaze {

    private record Size(int width, int height, boolean always) {}

    /** The parts that a page is made of, each once. */
    private static final String PARTS = "[...new Set([...document.querySelectorAll('main *')]"
            + ".map(part => part.tagName + '.' + (part.getAttribute('class') || '')))].sort().join(' ')";

    private static final List<Size> SIZES =
            List.of(new Size(390, 844, true), new Size(1920, 1080, false), new Size(1024, 768, true));

    /** Each look takes about half a second. */
    private static final int OFTEN_ENOUGH = 8;

    private final Set<String> seen = new HashSet<>();
    private final Map<String, Integer> looks = new HashMap<>();
    private final Optional<Path> pictures =
            Optional.ofNullable(System.getProperty("looks")).map(Path::of);

    void at(Page page, String order) {
        String path = page.url()
                .replaceFirst("^[a-z]+://[^/]+", "")
                .replace(order, "WB")
                .replaceAll("[?#].*", "")
                .replaceFirst("^(/station/WB)/[^/]+", "$1/item")
                .replaceAll("[A-Z]{2}-\\d+", "document");
        String state = path + " " + page.evaluate(PARTS);
        if (!seen.add(state) || looks.merge(path, 1, Integer::sum) > OFTEN_ENOUGH) {
            return;
        }
        // In the page itself: no page here has frames, and a second page for each look takes twice as long.
        assertThat(new AxeBuilder(page).setLegacyMode(true).analyze().getViolations())
                .as(page.url())
                .extracting(Rule::getId, rule -> rule.getNodes().get(0).getHtml())
                .isEmpty();
        for (Size size : SIZES) {
            if (size.always() || pictures.isPresent()) {
                page.setViewportSize(size.width(), size.height());
                assertThat((int) page.evaluate("document.documentElement.scrollWidth"))
                        .as(page.url() + " at " + size.width())
                        .isEqualTo(size.width());
                pictures.ifPresent(folder -> taken(page, folder, size));
            }
        }
    }

    private void taken(Page page, Path folder, Size size) {
        String name = "%03d%s-%d"
                .formatted(
                        seen.size(),
                        page.url().replaceFirst("^[a-z]+://[^/]+", "").replaceAll("[^A-Za-z0-9]+", "-"),
                        size.width());
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(folder.resolve(name + "-light.png"))
                .setFullPage(true));
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(folder.resolve(name + "-dark.png"))
                .setFullPage(true));
        page.emulateMedia(
                new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT).setMedia(Media.SCREEN));
    }
}
