package wainbook.line.balance.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages of the balance. */
@CheckedTemplate(basePath = "line", defaultName = CheckedTemplate.ELEMENT_NAME)
final class BalancePages {

    private BalancePages() {}

    static native TemplateInstance balance(BalanceView view);
}
