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
})();
