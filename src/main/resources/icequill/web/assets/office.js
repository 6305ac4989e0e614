// Helps whoever types: what a form would show is fetched while he does. Without it every page works by its buttons.
'use strict';
(() => {
    const problems = document.querySelector('.problems');
    if (problems) problems.focus();
    document.querySelectorAll('form[data-live]').forEach(form => {
        const target = document.getElementById(form.dataset.live);
        let asked = 0;
        let timer;
        const fetchNow = async () => {
            const mine = ++asked;
            const query = new URLSearchParams(new FormData(form)).toString();
            const address = form.action.split('?')[0] + '?' + query;
            try {
                const answer = await fetch(address, { headers: { Accept: 'text/html' } });
                if (!answer.ok) return;
                const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
                const piece = page.getElementById(form.dataset.live);
                // A late answer to earlier letters is dropped.
                if (piece && mine === asked) {
                    target.replaceChildren(...piece.childNodes);
                    // How many there are is said; what they are is only shown.
                    const count = page.getElementById('count');
                    if (count) document.getElementById('count').textContent = count.textContent;
                    history.replaceState(null, '', address);
                }
            } catch (away) {
                // The button still asks.
            }
        };
        form.addEventListener('input', () => {
            clearTimeout(timer);
            timer = setTimeout(fetchNow, 150);
        });
    });

    // What was shown of a form's first values goes once others are typed.
    document.querySelectorAll('form[data-clears]').forEach(form => form.addEventListener('input', () => {
        const shown = document.getElementById(form.dataset.clears);
        if (shown) shown.remove();
    }));
    // The piece of a page that an answer has under an id, put in the place of ours.
    const put = (text, id) => {
        const piece = new DOMParser().parseFromString(text, 'text/html').getElementById(id);
        if (piece) document.getElementById(id).replaceChildren(...piece.childNodes);
    };
    // The days that an answer understood, each beside its field.
    const putDays = text => document.querySelectorAll('.understood').forEach(day => put(text, day.id));
    // Work that takes long is looked at again until it ends. How far it is, is said; the rest is only shown.
    const watched = document.querySelector('[data-watch]');
    const watch = async () => {
        try {
            const answer = await fetch(location.href, { headers: { Accept: 'text/html' } });
            const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
            const now = page.getElementById('run');
            if (answer.ok && now) {
                const state = document.getElementById('state');
                if (state.textContent !== page.getElementById('state').textContent) state.textContent = page.getElementById('state').textContent;
                const ended = !now.hasAttribute('data-watch');
                if (ended || !watched.contains(document.activeElement)) watched.replaceChildren(...now.childNodes);
                if (ended) return;
            }
        } catch (away) {
            // The next look will tell.
        }
        setTimeout(watch, 700);
    };
    if (watched) setTimeout(watch, 700);

    // A field with a list is a combobox of the ARIA authoring practices: letters find, arrows move, Enter takes, Escape closes.
    const plain = text => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
    const choices = field => (document.getElementById(field.dataset.list) || { options: [] }).options;
    const popup = field => document.getElementById(field.id + '-options');
    const active = field => popup(field).querySelector('[aria-selected=true]');
    const close = field => {
        popup(field).hidden = true;
        field.setAttribute('aria-expanded', 'false');
        field.removeAttribute('aria-activedescendant');
    };
    const mark = (field, option) => {
        popup(field).querySelectorAll('[role=option]').forEach(each => each.setAttribute('aria-selected', String(each === option)));
        option.scrollIntoView({ block: 'nearest' });
        field.setAttribute('aria-activedescendant', option.id);
    };
    const find = field => {
        const words = plain(field.value).split(/\s+/).filter(word => word);
        const found = [...choices(field)].filter(option => option.value !== field.value
            && words.every(word => plain(option.value + ' ' + option.textContent).includes(word))).slice(0, 12);
        popup(field).replaceChildren(...found.map((option, i) => {
            const item = document.createElement('li');
            Object.assign(item, { id: field.id + '-option-' + i, role: 'option',
                textContent: option.textContent ? option.textContent + ' \u00b7 ' + option.value : option.value });
            item.setAttribute('aria-selected', 'false');
            item.dataset.value = option.value;
            return item;
        }));
        popup(field).hidden = found.length === 0;
        field.setAttribute('aria-expanded', String(found.length > 0));
        field.removeAttribute('aria-activedescendant');
    };
    // What a short name stands for is said below it.
    const explain = field => {
        const known = [...choices(field)].find(option => option.value === field.value);
        field.parentElement.querySelector('.chosen').textContent = known ? known.textContent : '';
    };
    const take = (field, option) => {
        field.value = option.dataset.value;
        close(field);
        field.dispatchEvent(new Event('change', { bubbles: true }));
        field.dispatchEvent(new CustomEvent('input', { bubbles: true, detail: 'taken' }));
    };
    document.querySelectorAll('input[list]').forEach(field => {
        field.dataset.list = field.getAttribute('list');
        field.removeAttribute('list');
        const list = document.createElement('ul');
        Object.assign(list, { id: field.id + '-options', className: 'options', role: 'listbox', hidden: true });
        list.setAttribute('aria-label', field.labels[0].textContent);
        const chosen = document.createElement('p');
        chosen.className = 'hint chosen';
        field.after(list, chosen);
        Object.entries({ role: 'combobox', 'aria-autocomplete': 'list', 'aria-expanded': 'false', 'aria-controls': list.id })
            .forEach(([name, value]) => field.setAttribute(name, value));
        explain(field);
    });
    document.addEventListener('input', event => {
        if (!event.target.dataset.list) return;
        explain(event.target);
        if (event.detail !== 'taken') {
            if (event.target.value.length >= Number(event.target.dataset.letters || 1)) find(event.target);
            else close(event.target);
        }
    });
    document.addEventListener('keydown', event => {
        const field = event.target;
        if (!field.dataset.list || event.ctrlKey || event.altKey || event.metaKey) return;
        if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
            if (popup(field).hidden) find(field);
            const all = [...popup(field).children];
            if (all.length) {
                const step = event.key === 'ArrowDown' ? 1 : -1;
                const at = all.indexOf(active(field));
                mark(field, all[at < 0 ? (step > 0 ? 0 : all.length - 1) : (at + step + all.length) % all.length]);
            }
            event.preventDefault();
        } else if (event.key === 'Enter' && !popup(field).hidden && active(field)) {
            take(field, active(field));
            event.preventDefault();
        } else if (event.key === 'Escape' && !popup(field).hidden) {
            close(field);
            event.preventDefault();
        }
    }, true);
    document.addEventListener('focusout', event => { if (event.target.dataset.list) close(event.target); });
    document.addEventListener('mousedown', event => {
        const option = event.target.closest('.options [role=option]');
        if (!option) return;
        event.preventDefault();
        take(document.getElementById(option.parentElement.id.replace(/-options$/, '')), option);
    });

    document.querySelectorAll('form[data-price]').forEach(form => {
        let asked = 0;
        let timer;
        const price = async () => {
            const mine = ++asked;
            try {
                const answer = await fetch(form.dataset.price, { method: 'POST', body: new URLSearchParams(new FormData(form)) });
                const text = await answer.text();
                if (answer.ok && mine === asked) {
                    put(text, 'price');
                    putDays(text);
                }
            } catch (away) {
                // The button still asks.
            }
        };
        form.addEventListener('input', () => {
            clearTimeout(timer);
            timer = setTimeout(price, 300);
        });
        // What a box is about is told of once it is ticked; a machine's number key does it, where nothing is typed.
        const boxes = form.querySelectorAll('input[data-opens]');
        const show = box => { document.getElementById(box.dataset.opens).hidden = !box.checked; };
        boxes.forEach(box => {
            show(box);
            box.addEventListener('change', () => show(box));
        });
        document.addEventListener('keydown', event => {
            const typing = event.target.closest('input:not([type=checkbox]), textarea, select');
            if (typing || event.ctrlKey || event.altKey || event.metaKey) return;
            boxes.forEach(box => {
                if (box.dataset.digit === event.key) box.click();
            });
        });
        // Enter in a field stores nothing; with Ctrl it does.
        const main = form.querySelector('[data-main]');
        form.addEventListener('keydown', event => {
            if (event.key !== 'Enter' || event.defaultPrevented) return;
            if (event.ctrlKey || event.metaKey) {
                event.preventDefault();
                form.requestSubmit(main);
            } else if (event.target.matches('input')) {
                event.preventDefault();
            }
        });
        // A grade follows the name that it is known for.
        form.addEventListener('change', event => {
            const known = [...choices(event.target)]
                .find(option => option.value === event.target.value && option.dataset.grade);
            const grade = known && form.elements[event.target.name.replace(/name$/, 'grade')];
            if (grade) grade.value = known.dataset.grade;
        });
        let sent = false;
        addEventListener('pageshow', () => { sent = false; });
        form.addEventListener('submit', event => {
            if (event.submitter && event.submitter.hasAttribute('formaction')) return;
            if (sent) event.preventDefault();
            sent = true;
        });
    });

    // What is typed is kept while it is typed, and once more when the page is left; not after it was sent.
    document.querySelectorAll('form[data-draft]').forEach(form => {
        const told = form.querySelector('[data-kept]');
        let changed = false;
        let timer;
        // What ended in another window is not written anew: it is said, and the button keeps what stands here under a new name.
        let isEnded = false;
        const ended = text => {
            isEnded = true;
            const page = new DOMParser().parseFromString(text, 'text/html');
            told.textContent = [...page.querySelectorAll('.problems li')].map(one => one.textContent).join(' ');
            const fresh = page.querySelector('input[name=draft]');
            if (fresh) form.elements.draft.value = fresh.value;
        };
        const keep = async () => {
            clearTimeout(timer);
            if (!changed || isEnded) return;
            changed = false;
            try {
                const answer = await fetch(form.dataset.draft, { method: 'POST', redirect: 'manual', keepalive: true,
                    body: new URLSearchParams(new FormData(form)) });
                if (answer.type === 'opaqueredirect') {
                    told.textContent = told.dataset.kept;
                    history.replaceState(null, '', form.getAttribute('action') + '?draft=' + form.elements.draft.value);
                    return;
                }
                if (answer.status === 409) {
                    ended(await answer.text());
                    return;
                }
            } catch (away) {
                // It is tried again.
            }
            changed = true;
            told.textContent = '';
            timer = setTimeout(keep, 5000);
        };
        form.addEventListener('input', () => {
            changed = true;
            clearTimeout(timer);
            timer = setTimeout(keep, 800);
        });
        document.addEventListener('visibilitychange', () => { if (document.hidden) keep(); });
        addEventListener('pagehide', keep);
        form.addEventListener('submit', event => {
            if (event.submitter && event.submitter.hasAttribute('formaction')) return;
            clearTimeout(timer);
            changed = false;
        });
        // In another language the same stands in its fields.
        const languages = document.querySelector('form.languages');
        languages.addEventListener('submit', async event => {
            if (!changed && !location.search) return;
            event.preventDefault();
            await keep();
            languages.elements.back.value = location.pathname + location.search;
            const chosen = document.createElement('input');
            Object.assign(chosen, { type: 'hidden', name: 'language', value: event.submitter.value });
            languages.append(chosen);
            languages.submit();
        });
    });

    // There is always one more row than are filled.
    document.querySelectorAll('[data-rows]').forEach(rows => rows.addEventListener('input', event => {
        const row = event.target.closest('[data-row]');
        const all = rows.querySelectorAll('[data-row]');
        if (!row || row !== all[all.length - 1] || !event.target.value) return;
        const [, what, number] = row.dataset.row.match(/^(.*?)(\d+)$/);
        const next = row.cloneNode(true);
        const renumbered = text => text.replace(new RegExp('\\b(accepted|' + what + ')' + number + '(?!\\d)', 'g'),
            '$1' + (Number(number) + 1));
        [next, ...next.querySelectorAll('*')].forEach(element => {
            for (const attribute of element.attributes) attribute.value = renumbered(attribute.value);
            if (element.matches('input[type=checkbox], input[type=radio]')) element.checked = false;
            else if (element.matches('input, textarea')) element.value = '';
            element.removeAttribute('aria-invalid');
            if (element.matches('[aria-describedby*="error-"]')) element.removeAttribute('aria-describedby');
            if (element.matches('.error')) element.remove();
            if (element.matches('.options, .chosen, .understood')) element.replaceChildren();
            if (element.matches('.options')) element.hidden = true;
        });
        const own = new RegExp('\\b' + (Number(number) + 1) + '\\b');
        next.querySelectorAll('label, legend').forEach(label => {
            if (!label.children.length) label.textContent = label.textContent.replace(own, Number(number) + 2);
        });
        row.after(next);
    }));
    // Prices come first, what takes longer after them. While an answer is under way only the newest question waits for it.
    document.querySelectorAll('form[data-figures]').forEach(form => {
        const working = form.querySelector('.working');
        let running = false;
        let again = false;
        let timer;
        const part = async name => {
            const fields = new URLSearchParams(new FormData(form));
            fields.append('part', name);
            const answer = await fetch(form.dataset.figures, { method: 'POST', body: fields });
            if (!answer.ok) return;
            const text = await answer.text();
            if (name === 'ways') {
                put(text, 'said');
                putDays(text);
            }
            put(text, name);
        };
        const figures = async () => {
            again = true;
            if (running) return;
            running = true;
            const patience = setTimeout(() => { working.hidden = false; }, 500);
            try {
                while (again) {
                    again = false;
                    await part('ways');
                    if (!again) await part('ahead');
                }
            } catch (away) {
                // The button still asks.
            }
            clearTimeout(patience);
            working.hidden = true;
            running = false;
        };
        form.addEventListener('input', () => {
            clearTimeout(timer);
            timer = setTimeout(figures, 300);
        });
        if ('now' in form.dataset) figures();
        // A machine's number key ticks it, where nothing is typed.
        document.addEventListener('keydown', event => {
            const typing = event.target.closest('input:not([type=checkbox]), textarea, select');
            if (typing || event.ctrlKey || event.altKey || event.metaKey) return;
            form.querySelectorAll('input[data-digit]').forEach(box => {
                if (box.dataset.digit === event.key) box.click();
            });
        });
        let sent = false;
        addEventListener('pageshow', () => { sent = false; });
        form.addEventListener('submit', event => {
            const asks = event.submitter && event.submitter.getAttribute('formaction');
            if (asks === form.dataset.figures) {
                event.preventDefault();
                figures();
            }
            if (asks) return;
            if (sent) event.preventDefault();
            sent = true;
        });
    });
})();
