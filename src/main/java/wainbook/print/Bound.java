package wainbook.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Several PDFs as one. It is PDF/A-3a and PDF/UA-1 where its parts are; a part from elsewhere is taken page by page as it is
 * and can make the whole fall short. Attachments are those given here, not those of the parts.
 */
public final class Bound {

    /** A part that cannot be read: damaged, locked, or no PDF. */
    public static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1;

        Unreadable(String message, Throwable cause) {
            super(message, cause);
        }
    }

    private Bound() {}

    /** Whether a file can be a part. */
    public static boolean readable(byte[] file) {
        try (PDDocument document = Loader.loadPDF(file)) {
            return !document.isEncrypted() && document.getNumberOfPages() > 0;
        } catch (IOException | RuntimeException damaged) {
            return false;
        }
    }

    /**
     * All parts in their order. Equal parts give equal bytes.
     *
     * @param first printed by {@link Printer}: the whole has its metadata, with the heading given here
     * @throws Unreadable if a part is not {@link #readable}
     */
    public static byte[] together(Heading heading, byte[] first, List<byte[]> more, List<Attachment> attachments) {
        try (PDDocument whole = Loader.loadPDF(first)) {
            var merger = new PDFMergerUtility();
            for (byte[] part : more) {
                append(merger, whole, part);
            }
            Attached.to(whole, attachments, heading.at());
            whole.getDocumentCatalog().setLanguage(heading.language().toLanguageTag());
            return Sealed.bytes(whole, heading);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void append(PDFMergerUtility merger, PDDocument whole, byte[] part) {
        if (!readable(part)) {
            throw new Unreadable("a part of " + part.length + " bytes cannot be read", null);
        }
        try (PDDocument document = Loader.loadPDF(part)) {
            merger.appendDocument(whole, document);
        } catch (IOException e) {
            throw new Unreadable("a part of " + part.length + " bytes cannot be joined", e);
        }
    }
}
