/** Parts of pages that are told anew to whoever looks at them, when the record has grown or a minute has passed. */
package wainbook.page.live;
