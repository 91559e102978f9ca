package wainbook.print;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The document's outline, made of its headings of the first and second level that carry an id. */
final class Outline {

    private Outline() {}

    static void addTo(Document document) {
        List<Element> headings = headings(document);
        if (headings.isEmpty()) {
            return;
        }
        Element outline = document.createElement("bookmarks");
        Element chapter = outline;
        for (Element heading : headings) {
            Element mark = document.createElement("bookmark");
            mark.setAttribute("name", heading.getTextContent().strip().replaceAll("\\s+", " "));
            mark.setAttribute("href", "#" + heading.getAttribute("id"));
            boolean first = heading.getTagName().equals("h1");
            (first ? outline : chapter).appendChild(mark);
            chapter = first ? mark : chapter;
        }
        Markup.element(document, "head").appendChild(outline);
    }

    private static List<Element> headings(Document document) {
        var found = new ArrayList<Element>();
        NodeList all = document.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if (element.getTagName().matches("h[12]") && element.hasAttribute("id")) {
                found.add(element);
            }
        }
        return found;
    }
}
