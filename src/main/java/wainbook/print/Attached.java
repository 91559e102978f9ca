package wainbook.print;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** Files inside a PDF, as ISO 19005-3:2012 6.8 asks: named, typed, dated, and associated with the document. */
final class Attached {

    private Attached() {}

    /** Takes the place of whatever was attached before. */
    static void to(PDDocument document, List<Attachment> attachments, Instant at) throws IOException {
        var catalog = document.getDocumentCatalog();
        catalog.getCOSObject().removeItem(COSName.AF);
        var names = new PDDocumentNameDictionary(catalog);
        if (attachments.isEmpty()) {
            names.getCOSObject().removeItem(COSName.EMBEDDED_FILES);
            return;
        }
        Map<String, PDComplexFileSpecification> byName = new TreeMap<>();
        var associated = new COSArray();
        for (Attachment attachment : attachments) {
            PDComplexFileSpecification file = file(document, attachment, date(at));
            byName.put(attachment.name(), file);
            associated.add(file);
        }
        var tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(byName);
        names.setEmbeddedFiles(tree);
        catalog.setNames(names);
        catalog.getCOSObject().setItem(COSName.AF, associated);
    }

    private static PDComplexFileSpecification file(PDDocument document, Attachment attachment, Calendar date)
            throws IOException {
        var content = new PDEmbeddedFile(document, new ByteArrayInputStream(attachment.bytes()), COSName.FLATE_DECODE);
        content.setSubtype(attachment.mediaType());
        content.setSize(attachment.bytes().length);
        content.setModDate(date);
        var file = new PDComplexFileSpecification();
        file.setFile(attachment.name());
        file.setFileUnicode(attachment.name());
        file.setFileDescription(attachment.description());
        file.setEmbeddedFile(content);
        file.setEmbeddedFileUnicode(content);
        file.getCOSObject()
                .setItem(
                        COSName.getPDFName("AFRelationship"),
                        COSName.getPDFName(attachment.relationship().name()));
        return file;
    }

    static Calendar date(Instant at) {
        return GregorianCalendar.from(at.atZone(ZoneOffset.UTC));
    }
}
