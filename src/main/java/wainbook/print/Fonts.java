package wainbook.print;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The typefaces of all print, read once. The stylesheet lists {@code sans} behind each of them: what one has not, such as
 * ✓ and µ, is taken from there glyph by glyph. A family that is not named here would print nothing and still be valid.
 */
final class Fonts {

    private static final byte[] TEXT = read("next-400.ttf");
    private static final byte[] BOLD = read("next-700.ttf");
    private static final byte[] FIXED = read("mono-400.ttf");
    private static final byte[] SANS = read("dejavu-400.ttf");

    private Fonts() {}

    static void addTo(PdfRendererBuilder builder) {
        builder.useFont(of(TEXT), "text", 400, FontStyle.NORMAL, true)
                .useFont(of(BOLD), "text", 700, FontStyle.NORMAL, true)
                .useFont(of(FIXED), "fixed", 400, FontStyle.NORMAL, true)
                .useFont(of(SANS), "sans", 400, FontStyle.NORMAL, true);
    }

    private static FSSupplier<InputStream> of(byte[] font) {
        return () -> new ByteArrayInputStream(font);
    }

    private static byte[] read(String name) {
        try (InputStream bytes = Fonts.class.getResourceAsStream("/fonts/" + name)) {
            return bytes.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
