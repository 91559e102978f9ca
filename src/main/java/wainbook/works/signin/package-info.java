/** Who may sign in, by which password or token, and how guessing is slowed down. */
package wainbook.works.signin;
