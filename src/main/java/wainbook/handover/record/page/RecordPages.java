package wainbook.handover.record.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

@CheckedTemplate(basePath = "handover", defaultName = CheckedTemplate.ELEMENT_NAME)
final class RecordPages {

    private RecordPages() {}

    static native TemplateInstance record(RecordView view);

    static native TemplateInstance receipt(RecordView view);

    static native TemplateInstance wordlists(WordlistsView view);
}
