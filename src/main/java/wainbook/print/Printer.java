package wainbook.print;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Prints a document: PDF/A-3a (ISO 19005-3) that is PDF/UA-1 (ISO 14289-1) too. */
public final class Printer {

    private static final byte[] SRGB =
            ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

    static {
        // The engine tells of its every step, on a console of its own.
        XRLog.setLoggingEnabled(false);
    }

    private Printer() {}

    /**
     * The file. Equal pages give equal bytes.
     *
     * @throws IllegalArgumentException if the body is not well-formed
     */
    public static byte[] pdf(PdfPage page) {
        var builder = new PdfRendererBuilder();
        builder.withW3cDocument(Markup.of(page), "")
                .useSVGDrawer(new BatikSVGDrawer())
                // What no typeface has is shown as unknown, never as another sign.
                .useReplacementText("\uFFFD")
                // Nothing is fetched: pictures lie in the document as data.
                .useUriResolver((base, uri) -> uri.startsWith("data:") || uri.startsWith("#") ? uri : null)
                .usePdfAConformance(PdfAConformance.PDFA_3_A)
                .usePdfUaAccessibility(true)
                .useColorProfile(SRGB)
                .withProducer("Wainbook");
        Fonts.addTo(builder);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
                PDDocument document = renderer.createPDFKeepOpen()) {
            Attached.to(document, page.attachments(), page.heading().at());
            return Sealed.bytes(document, page.heading());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
