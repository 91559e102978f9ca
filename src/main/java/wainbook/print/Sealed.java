package wainbook.print;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/**
 * Takes the clock out of a file: its dates are those of its heading, and its identifier is made from the heading. The two
 * places that hold the same facts, the information dictionary and the XMP packet, are kept equal, as PDF/A asks.
 */
final class Sealed {

    private static final Pattern CREATED = Pattern.compile("(?<=<xmp:CreateDate>)[^<]*(?=</xmp:CreateDate>)");
    private static final Pattern TITLE =
            Pattern.compile("(<dc:title>.*?<rdf:li[^>]*>)[^<]*(</rdf:li>)", Pattern.DOTALL);
    private static final Pattern ABOUT =
            Pattern.compile("(<dc:description>.*?<rdf:li[^>]*>)[^<]*(</rdf:li>)", Pattern.DOTALL);
    private static final DateTimeFormatter XMP_DATE = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss'+00:00'");

    private Sealed() {}

    static byte[] bytes(PDDocument document, Heading heading) throws IOException {
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(heading.title());
        information.setSubject(heading.about());
        information.setCreationDate(Attached.date(heading.at()));
        information.getCOSObject().removeItem(COSName.MOD_DATE);
        metadata(document, heading);
        identifier(document, heading);
        var bytes = new ByteArrayOutputStream();
        document.save(bytes);
        return bytes.toByteArray();
    }

    private static void metadata(PDDocument document, Heading heading) throws IOException {
        PDMetadata metadata = document.getDocumentCatalog().getMetadata();
        String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
        xmp = replaced(CREATED, xmp, XMP_DATE.format(heading.at().atOffset(ZoneOffset.UTC)));
        xmp = replaced(TITLE, xmp, heading.title());
        xmp = replaced(ABOUT, xmp, heading.about());
        metadata.importXMPMetadata(xmp.getBytes(StandardCharsets.UTF_8));
    }

    private static String replaced(Pattern where, String xmp, String text) {
        var matcher = where.matcher(xmp);
        if (!matcher.find()) {
            throw new IllegalStateException("no " + where + " in the metadata: " + xmp);
        }
        String plain = text.replace("&", "&amp;").replace("<", "&lt;");
        String before = matcher.groupCount() == 2 ? matcher.group(1) : "";
        String after = matcher.groupCount() == 2 ? matcher.group(2) : "";
        return xmp.substring(0, matcher.start()) + before + plain + after + xmp.substring(matcher.end());
    }

    private static void identifier(PDDocument document, Heading heading) {
        var both = new COSArray();
        byte[] id = digest(heading.toString());
        both.add(new COSString(id));
        both.add(new COSString(id));
        document.getDocument().setDocumentID(both);
    }

    private static byte[] digest(String text) {
        try {
            byte[] whole = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return java.util.Arrays.copyOf(whole, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
