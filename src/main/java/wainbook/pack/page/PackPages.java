package wainbook.pack.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import wainbook.pack.page.view.CheckView;
import wainbook.pack.page.view.DamagedView;
import wainbook.pack.page.view.PackList;
import wainbook.pack.page.view.PackView;
import wainbook.pack.page.view.ReceiptView;
import wainbook.pack.page.view.TransportView;

/** The pages of packs. */
@CheckedTemplate(basePath = "pack", defaultName = CheckedTemplate.ELEMENT_NAME)
final class PackPages {

    private PackPages() {}

    static native TemplateInstance packs(PackList list);

    static native TemplateInstance pack(PackView view);

    static native TemplateInstance receipt(ReceiptView view);

    static native TemplateInstance damaged(DamagedView view);

    static native TemplateInstance check(CheckView view);

    static native TemplateInstance transport(TransportView view);
}
