package wainbook.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.text.PDFTextStripper;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** A PDF as an independent validator (veraPDF, of the PDF Association) and a reader see it. */
public final class Validated {

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private Validated() {}

    /** Fails with the clauses that are broken, such as {@code 7.1-9}. */
    public static void passes(byte[] pdf) {
        assertThat(failedRules(pdf, PDFAFlavour.PDFA_3_A)).as("PDF/A-3a").isEmpty();
        assertThat(failedRules(pdf, PDFAFlavour.PDFUA_1)).as("PDF/UA-1").isEmpty();
    }

    static List<String> failedRules(byte[] pdf, PDFAFlavour flavour) {
        try (var parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                var validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            return validator.validate(parser).getFailedChecks().keySet().stream()
                    .map(rule -> rule.getClause() + "-" + rule.getTestNumber())
                    .sorted()
                    .toList();
        } catch (VeraPDFException | IOException e) {
            throw new AssertionError(e);
        }
    }

    /** All its text, with every run of blanks as one. */
    public static String text(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            var reader = new PDFTextStripper();
            reader.setSortByPosition(true);
            return reader.getText(document).replaceAll("\\s+", " ");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** How many pictures of pixels its pages draw. */
    public static long pictures(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            long pictures = 0;
            for (var page : document.getPages()) {
                for (var name : page.getResources().getXObjectNames()) {
                    pictures += page.getResources().isImageXObject(name) ? 1 : 0;
                }
            }
            return pictures;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    public static int pages(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** The attached files by name. */
    public static Map<String, byte[]> attachments(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Map<String, byte[]> files = new TreeMap<>();
            for (var named : document.getDocumentCatalog()
                    .getNames()
                    .getEmbeddedFiles()
                    .getNames()
                    .entrySet()) {
                PDComplexFileSpecification file = named.getValue();
                files.put(named.getKey(), file.getEmbeddedFileUnicode().toByteArray());
            }
            return files;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
