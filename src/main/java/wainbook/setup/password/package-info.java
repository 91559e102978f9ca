/** New passwords: one's own, and another person's by the administrator, on record either way. */
package wainbook.setup.password;
