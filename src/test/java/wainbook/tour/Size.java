package wainbook.tour;

import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.Locale;

/** How a page is looked at. */
record Size(int width, int height, ColorScheme scheme) {

    static final Size TABLET = new Size(1024, 768, ColorScheme.LIGHT);
    static final Size TELEPHONE = new Size(390, 844, ColorScheme.LIGHT);

    /** One in the suite; all of them, with pictures, under the Maven profile {@code looks}. */
    static List<Size> wanted() {
        return Boolean.getBoolean("looks.all")
                ? List.of(
                        TABLET,
                        new Size(1024, 768, ColorScheme.DARK),
                        TELEPHONE,
                        new Size(390, 844, ColorScheme.DARK),
                        new Size(1920, 1080, ColorScheme.LIGHT),
                        new Size(1920, 1080, ColorScheme.DARK))
                : List.of(TABLET);
    }

    @Override
    public String toString() {
        return width + "-" + scheme.name().toLowerCase(Locale.ROOT);
    }
}
