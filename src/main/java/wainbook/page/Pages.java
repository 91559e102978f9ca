package wainbook.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages that belong to no other room. */
@CheckedTemplate(basePath = "page", defaultName = CheckedTemplate.ELEMENT_NAME)
public final class Pages {

    private Pages() {}

    public static native TemplateInstance problem(Trouble trouble);

    public static native TemplateInstance signIn(SignIn signIn);

    static native TemplateInstance looks(Looks looks);
}
